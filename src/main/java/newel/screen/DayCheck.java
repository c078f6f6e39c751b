package newel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import newel.client.Answer;
import newel.client.DayAnswers;
import newel.client.DaySign;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** Weighs what was asked and measured before a session, together with what holds for the client anyway; the sternest wins. */
final class DayCheck {
    private static final Rule CLOT = new Rule("DAY-LEG-AND-BREATH", "NHS on clots in a vein", Known.SEEN);
    private static final Rule FAINT =
            new Rule("DAY-FAINT-AND-HEART", "ESC syncope guideline 2018; ours", Known.FROM_MEMORY);
    private static final Rule PAIN =
            new Rule("DAY-PAIN", "the pain-monitoring model; over 5 at rest is ours", Known.DESIGN_CHOICE);
    private static final Rule STANDING =
            new Rule("DAY-STANDING", "what holds for the client anyway", Known.DESIGN_CHOICE);

    private final List<Finding> go = new ArrayList<>();
    private final List<Finding> light = new ArrayList<>();
    private final List<Finding> stop = new ArrayList<>();
    private Today.Whom whom = Today.Whom.NOBODY;

    /** @param sugar empty for somebody who takes no medicine that can make the sugar low */
    static Today judge(DayAnswers answers, Optional<SugarToday> sugar, Screening standing, Choices choices) {
        DayCheck check = new DayCheck();
        check.standing(standing);
        check.signs(answers);
        check.pain(answers.pain());
        check.atRest(AtRest.of(answers.vitals(), choices.restSet()));
        sugar.ifPresent(check::sugar);
        return check.outcome();
    }

    private Today outcome() {
        if (!stop.isEmpty()) {
            return new Today.NotToday(whom, List.copyOf(stop));
        }
        return light.isEmpty() ? new Today.Go(List.copyOf(go)) : new Today.LightOnly(join(light, go));
    }

    private void standing(Screening standing) {
        switch (standing.permission()) {
            case START -> {
                if (standing.effortAtMost() <= Intensity.LIGHT.effortAtMost()) {
                    light.add(new Finding(STANDING, "Light work only holds for this client anyway."));
                }
            }
            case PREPARE ->
                stop(Today.Whom.NOBODY, new Finding(STANDING, "An answer is still waited for: nothing starts yet."));
            case NOTHING ->
                stop(
                        standing.urgency().map(Today.Whom::of).orElse(Today.Whom.DOCTOR_SOON),
                        new Finding(STANDING, "No exercise may be done until somebody has looked."));
        }
    }

    private void signs(DayAnswers answers) {
        for (DayRule each : DayRule.ALL) {
            switch (answers.signs().to(each.sign())) {
                case YES -> take(each.yes(), each.raised());
                case UNKNOWN -> take(each.unknown(), each.unanswered());
                case NO -> {}
            }
        }
        together(answers);
    }

    private void together(DayAnswers answers) {
        boolean breath = yes(answers, DaySign.BREATH);
        if (yes(answers, DaySign.LEG) && breath) {
            stop(Today.Whom.EMERGENCY, new Finding(CLOT, "One leg swollen and out of breath together."));
        }
        if (yes(answers, DaySign.FAINTED) && (yes(answers, DaySign.HEART_RACED) || breath)) {
            stop(Today.Whom.EMERGENCY, new Finding(FAINT, "Fainted, with a racing heart or out of breath."));
        }
    }

    private static boolean yes(DayAnswers answers, DaySign sign) {
        return answers.signs().to(sign) == Answer.YES;
    }

    private void take(DayRule.Then then, Finding finding) {
        switch (then) {
            case EMERGENCY -> stop(Today.Whom.EMERGENCY, finding);
            case DOCTOR_TODAY -> stop(Today.Whom.DOCTOR_TODAY, finding);
            case NOT_TODAY -> stop(Today.Whom.NOBODY, finding);
            case LIGHT -> light.add(finding);
            case GO -> go.add(finding);
        }
    }

    private void pain(Integer pain) {
        if (pain == null) {
            light.add(new Finding(PAIN, "Pain at rest was not asked."));
        } else if (pain > PainZones.MOST) {
            stop(Today.Whom.DOCTOR_SOON, new Finding(PAIN, "Pain of " + pain + " at rest, over 5."));
        }
    }

    private void atRest(AtRest atRest) {
        switch (atRest) {
            case AtRest.Go rest -> {}
            case AtRest.NotMeasured missing -> go.addAll(missing.reasons());
            case AtRest.LightOnly rest -> light.addAll(rest.reasons());
            case AtRest.Hold hold -> hold.reasons().forEach(each -> stop(Today.Whom.of(hold.urgency()), each));
        }
    }

    private void sugar(SugarToday sugar) {
        switch (sugar) {
            case SugarToday.Go fine -> {}
            case SugarToday.SugarFirst first -> go.add(first.finding());
            case SugarToday.ModerateAtMost moderate -> go.add(moderate.finding());
            case SugarToday.NotYet notYet -> stop(Today.Whom.NOBODY, notYet.finding());
            case SugarToday.NotToday none -> stop(Today.Whom.DOCTOR_TODAY, none.finding());
        }
    }

    private void stop(Today.Whom call, Finding finding) {
        stop.add(finding);
        whom = whom.higher(call);
    }

    private static List<Finding> join(List<Finding> one, List<Finding> other) {
        List<Finding> both = new ArrayList<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }

    static List<Statement> stated() {
        List<Statement> stated =
                new ArrayList<>(DayRule.ALL.stream().map(DayRule::stated).toList());
        stated.add(Area.state(CLOT, Area.TODAY, "One leg swollen and out of breath: an emergency."));
        stated.add(Area.state(FAINT, Area.TODAY, "Fainted, with a racing heart or out of breath: an emergency."));
        stated.add(Area.state(PAIN, Area.TODAY, "Pain over 5 at rest: not today; not asked: light only."));
        stated.add(
                Area.state(
                        new Rule("DAY-BEYOND", "ours", Known.DESIGN_CHOICE),
                        Area.TODAY,
                        "A sign of heart, breath, leg, nerve or a harmful fall stays up after the day, until somebody has looked."));
        stated.add(Area.state(STANDING, Area.TODAY, "What holds for the client anyway holds on the day too."));
        return stated;
    }
}
