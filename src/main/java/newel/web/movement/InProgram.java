package newel.web.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import newel.compose.Block;
import newel.compose.BlockKind;
import newel.compose.Item;
import newel.program.Program;

/**
 * Where a form may come into a client's program.
 *
 * @param path the program's page
 * @param number of the newest version, 0 when there is no program
 * @param now what the program says of this movement, in words; empty when it is not in it
 * @param fits a form that does not fit needs a written reason, which the program's own page asks for
 */
public record InProgram(String path, int number, String now, boolean here, boolean fits, List<Act> acts) {
    /** @param page where the act can be looked at, and done with a reason */
    public record Act(String label, String action, String page) {}

    static InProgram of(Catalogue catalogue, Chosen chosen, Optional<Program> program, Variant variant) {
        String path = "/clients/" + chosen.id() + "/program";
        boolean fits = chosen.may(variant);
        if (program.isEmpty()) {
            return new InProgram(path, 0, "", false, fits, List.of());
        }
        int number = program.get().newest().number();
        Optional<Item> item = program.get().newest().item(variant.movement());
        boolean here = item.filter(each -> each.variant().equals(variant.id())).isPresent();
        return new InProgram(
                path,
                number,
                item.flatMap(each -> catalogue.variant(each.variant()))
                        .map(Variant::name)
                        .orElse(""),
                here,
                fits,
                item.isPresent()
                        ? here ? List.of() : List.of(swap(path, item.get()))
                        : additions(path, program.get(), catalogue.movementOf(variant)));
    }

    private static Act swap(String path, Item item) {
        String at = path + "/items/" + item.movement();
        return new Act("Put it in the place of that form", at + "/swap", at);
    }

    /** One for each part of the session that takes such a movement. */
    private static List<Act> additions(String path, Program program, Movement movement) {
        List<Act> acts = new ArrayList<>();
        List<Block> blocks = program.newest().firstSession().blocks();
        int round = 0;
        for (int at = 0; at < blocks.size(); at++) {
            BlockKind kind = blocks.get(at).kind();
            round += kind == BlockKind.ROUND ? 1 : 0;
            if (kind.kinds().contains(movement.kind())) {
                String words = kind.words().toLowerCase(Locale.ROOT);
                String to = kind == BlockKind.ROUND ? words + " " + round : "the " + words;
                String addition = path + "/blocks/" + at + "/addition";
                acts.add(new Act("Add it to " + to, addition, addition));
            }
        }
        return acts;
    }
}
