package newel.web.movement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import newel.body.Demands;
import newel.body.Joint;
import newel.body.Motion;
import newel.body.Side;
import newel.catalogue.Axis;
import newel.catalogue.Catalogue;
import newel.catalogue.Link;
import newel.catalogue.LinkChange;
import newel.catalogue.Movement;
import newel.catalogue.Quiet;
import newel.catalogue.Variant;
import newel.client.Profile;
import newel.handout.DoseWords;
import newel.handout.Pictures;
import newel.handout.RangeWords;
import newel.limit.Fit;
import newel.limit.Share;
import newel.limit.VariantDemands;
import newel.program.Program;
import newel.web.Practice;
import newel.web.form.KitWords;
import newel.web.limitation.MotionWords;
import newel.web.stair.Drawn;
import newel.web.stair.LinkWords;
import newel.web.stair.Step;

/** Makes the page of one form. */
final class VariantPages {
    /** Standard gravity, metres per second squared. */
    private static final double GRAVITY = 9.80665;

    /** Smaller figures say nothing, statures and shares. */
    private static final double TOO_SMALL = 0.005;

    private final Catalogue catalogue;
    private final VariantDemands demands;

    VariantPages(Practice practice) {
        this.catalogue = practice.catalogue();
        this.demands = practice.demands();
    }

    VariantPage page(
            Variant variant, Optional<Chosen> chosen, Optional<Program> program, List<FindPage.Option> clients) {
        Movement movement = catalogue.movementOf(variant);
        Demands asked = demands.at(variant, Share.WHOLE);
        Share share = share(variant, chosen);
        return new VariantPage(
                chosen.map(Chosen::header).orElse(null),
                chosen.map(Chosen::id).orElse(""),
                MovementRoutes.query(chosen),
                clients,
                MovementRoutes.AT + "/" + movement.id() + "/" + variant.id(),
                MovementRoutes.path(movement, chosen),
                movement.id(),
                movement.name(),
                variant.id(),
                variant.name(),
                step(variant, chosen),
                Pictures.of(variant, share),
                Drawn.motion(variant, share),
                RangeWords.of(share),
                variant.words(),
                facts(variant),
                Trained.of(variant.purposes()),
                angles(asked),
                loads(asked, chosen),
                loadNote(chosen),
                others(asked),
                easier(variant, chosen),
                harder(variant, chosen),
                chosen.map(each -> InProgram.of(catalogue, each, program, variant))
                        .orElse(null));
    }

    private static Share share(Variant variant, Optional<Chosen> chosen) {
        return chosen.map(each -> each.fit(variant)).orElse(null) instanceof Fit.FitsTrimmed trimmed
                ? trimmed.share()
                : Share.WHOLE;
    }

    private static Step step(Variant variant, Optional<Chosen> chosen) {
        return chosen.map(each -> Step.of(0, variant, each.fit(variant), false)).orElseGet(() -> Step.of(0, variant));
    }

    private static List<VariantPage.Line> facts(Variant variant) {
        List<VariantPage.Line> facts = new ArrayList<>();
        fact(facts, "Dose to begin with", DoseWords.of(variant.dose().beginner(), variant.sides()));
        fact(facts, "Dose to grow to", DoseWords.of(variant.dose().later(), variant.sides()));
        fact(facts, "Tempo", tempo(variant));
        fact(facts, "Longest hold", variant.holdSeconds() == 0 ? "" : variant.holdSeconds() + " seconds");
        fact(facts, "Sides", MovementWords.of(variant.sides()));
        fact(facts, "Part of the way", trim(variant));
        fact(facts, "Position", MovementWords.of(variant.position()));
        fact(facts, "Support", MovementWords.of(variant.support()));
        fact(facts, "Kit", kit(variant));
        fact(facts, "Grip", MovementWords.of(variant.grip()));
        fact(facts, "Effort", variant.effort() + " of 10");
        fact(facts, "Coordination", variant.coordination() + " of 3");
        fact(
                facts,
                "Mind",
                MovementWords.list(variant.traits().stream()
                        .sorted()
                        .map(MovementWords::of)
                        .toList()));
        return facts;
    }

    private static void fact(List<VariantPage.Line> facts, String what, String how) {
        if (!how.isEmpty()) {
            facts.add(new VariantPage.Line(what, how));
        }
    }

    private static String tempo(Variant variant) {
        return "%s out, %s held, %s back, in seconds"
                .formatted(
                        seconds(variant.tempo().out()),
                        seconds(variant.tempo().hold()),
                        seconds(variant.tempo().back()));
    }

    private static String seconds(double seconds) {
        return seconds == Math.rint(seconds) ? Long.toString((long) seconds) : Double.toString(seconds);
    }

    private static String trim(Variant variant) {
        String least = Math.round(100 * variant.trim().least()) + " %";
        return switch (variant.trim().part()) {
            case NONE -> "only the whole way does its work";
            case ARMS -> "each arm by itself, to " + least + " at the least";
            case LEGS -> "each leg by itself, to " + least + " at the least";
            case TRUNK -> "trunk and head, to " + least + " at the least";
            case WHOLE -> "all of it, to " + least + " at the least";
        };
    }

    private static String kit(Variant variant) {
        List<String> words = variant.kit().stream()
                .sorted()
                .map(KitWords::of)
                .map(label -> label.toLowerCase(Locale.ROOT))
                .toList();
        return words.isEmpty() ? "nothing" : MovementWords.list(words);
    }

    private static List<VariantPage.Angle> angles(Demands asked) {
        return Arrays.stream(Motion.values())
                .filter(motion -> DemandWords.most(asked, motion) > Quiet.angle(motion))
                .map(motion -> new VariantPage.Angle(
                        MotionWords.of(motion),
                        DemandWords.degrees(asked.angle(motion, Side.LEFT)),
                        DemandWords.degrees(asked.angle(motion, Side.RIGHT))))
                .toList();
    }

    private static List<VariantPage.Load> loads(Demands asked, Optional<Chosen> chosen) {
        return Arrays.stream(Joint.values())
                .map(joint -> {
                    double load = DemandWords.most(asked, joint);
                    return new VariantPage.Load(
                            DemandWords.of(joint),
                            DemandWords.load(load),
                            DemandWords.beside(joint, load),
                            moment(load, chosen));
                })
                .toList();
    }

    private static String moment(double load, Optional<Chosen> chosen) {
        return chosen.map(each -> each.client().profile())
                .filter(profile -> profile.massKg() != null)
                .map(profile -> Math.round(load * weightTimesHeight(profile)) + " N m")
                .orElse("");
    }

    /** Newton metres. */
    private static double weightTimesHeight(Profile profile) {
        return profile.massKg() * GRAVITY * profile.statureCm() / 100;
    }

    private static String loadNote(Optional<Chosen> chosen) {
        String what = "The largest still moment on the way, in percent of body weight times height.";
        return chosen.map(each -> each.client().profile())
                .map(profile -> profile.massKg() == null
                        ? what + " In newton metres once this client's weight is known."
                        : what + " In newton metres for this client.")
                .orElse(what);
    }

    private static List<VariantPage.Line> others(Demands asked) {
        List<VariantPage.Line> lines = new ArrayList<>();
        lines.add(new VariantPage.Line("Highest reach", DemandWords.percent(asked.fingertips()) + " of body height"));
        if (asked.armsHigh() > TOO_SMALL) {
            lines.add(new VariantPage.Line(
                    "Elbows at shoulder height or above", DemandWords.percent(asked.armsHigh()) + " of the way"));
        }
        if (asked.handShare() > TOO_SMALL) {
            lines.add(new VariantPage.Line(
                    "Most on one hand", DemandWords.percent(asked.handShare()) + " of body weight"));
        }
        if (Double.isFinite(asked.margin())) {
            lines.add(new VariantPage.Line(
                    "Balance to spare",
                    DemandWords.percent(asked.margin())
                            + " of body height, from the centre of mass to the edge of the base"));
        }
        lines.add(new VariantPage.Line("Head below the heart", asked.headBelowHeart() ? "yes" : "no"));
        return lines;
    }

    private List<VariantPage.Neighbour> easier(Variant variant, Optional<Chosen> chosen) {
        return variant.easier().stream()
                .map(link -> neighbour(
                        variant,
                        catalogue.variant(link.easier()).orElseThrow(),
                        link.axis(),
                        LinkWords.down(link.axis()),
                        change(variant, link),
                        chosen))
                .toList();
    }

    /** The same links from below: what falls on the way down rises on the way up. */
    private List<VariantPage.Neighbour> harder(Variant variant, Optional<Chosen> chosen) {
        return catalogue.harder(variant).stream()
                .flatMap(above -> above.easier().stream()
                        .filter(link -> link.easier().equals(variant.id()))
                        .map(link -> neighbour(
                                variant,
                                above,
                                link.axis(),
                                LinkWords.up(link.axis()),
                                turned(change(above, link)),
                                chosen)))
                .toList();
    }

    private static LinkChange turned(LinkChange down) {
        return new LinkChange(down.rises(), down.falls());
    }

    private LinkChange change(Variant harder, Link link) {
        Variant easier = catalogue.variant(link.easier()).orElseThrow();
        return LinkChange.between(harder, demands.at(harder, Share.WHOLE), easier, demands.at(easier, Share.WHOLE));
    }

    private VariantPage.Neighbour neighbour(
            Variant from, Variant to, Axis axis, String by, LinkChange change, Optional<Chosen> chosen) {
        DemandWords.Form here = form(from);
        DemandWords.Form there = form(to);
        Step step = step(to, chosen);
        return new VariantPage.Neighbour(
                MovementRoutes.path(to, chosen),
                to.name(),
                step.drawn(),
                by,
                DemandWords.axis(axis, here, there),
                step,
                change.falls().stream()
                        .map(name -> DemandWords.change(name, here, there))
                        .toList(),
                change.rises().stream()
                        .map(name -> DemandWords.change(name, here, there))
                        .toList());
    }

    private DemandWords.Form form(Variant variant) {
        return new DemandWords.Form(variant, demands.at(variant, Share.WHOLE));
    }
}
