package newel.web.program;

import java.time.LocalDate;
import java.util.List;
import newel.client.Client;
import newel.screen.Permission;
import newel.screen.Screening;
import newel.web.client.ClientHeader;

/**
 * Before there is a program: what the draft will rest on, and the one act.
 *
 * @param may something may be made ready; while nothing may be done, nothing is drafted
 */
public record NoProgramPage(
        ClientHeader header, String base, List<String> face, int minutes, List<String> goals, boolean may) {
    static NoProgramPage of(Client client, LocalDate today) {
        return new NoProgramPage(
                ClientHeader.of(client, today),
                "/clients/" + client.id().value() + "/program",
                Screening.of(client).face(),
                client.wishes().minutes(),
                client.wishes().goals().stream().map(goal -> goal.words()).toList(),
                Screening.of(client).permission() != Permission.NOTHING);
    }
}
