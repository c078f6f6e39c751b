package newel.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import newel.client.Answer;
import newel.client.Disease;
import newel.client.ReadinessAnswers;
import newel.client.Symptom;
import newel.source.Finding;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;

/** Red flags first, then the table, then what nobody has answered. */
final class ReadinessDecision {
    private static final Rule UNANSWERED =
            new Rule("unanswered", "an unanswered question is never read as no", Known.DESIGN_CHOICE);

    private final ReadinessAnswers answers;
    private final RedFlags flags;
    private final Cleared clearance;
    private final Row row;

    ReadinessDecision(ReadinessAnswers answers, Answer felt, LocalDate today) {
        this.answers = answers;
        this.flags = RedFlags.of(answers, felt);
        this.clearance = Cleared.of(answers, today);
        this.row = Row.first(
                answers.regularExercise().yes(),
                !symptoms(Answer.YES).isEmpty(),
                !diseases(Answer.YES).isEmpty() || !diseases(Answer.UNKNOWN).isEmpty(),
                answers.wantsVigorous().yes());
    }

    Readiness decide() {
        if (flags.stops().isPresent()) {
            return new Readiness.Stop(row, flags.stops().get(), flags.stopReasons());
        }
        List<Finding> clinician = waitsForClinician();
        List<Finding> client = waitsForClient();
        if (row == Row.B1 && !answers.symptomsCleared().yes()) {
            return new Readiness.Stop(row, Urgency.ROUTINE, join(clinician, client));
        }
        if (!clinician.isEmpty() || !client.isEmpty()) {
            Who who = clinician.isEmpty() ? Who.CLIENT : Who.CLINICIAN;
            return new Readiness.Wait(row, who, row.intensity(), join(clinician, client));
        }
        return goesOn();
    }

    private Readiness goesOn() {
        List<Finding> limits = limits();
        return limits.isEmpty()
                ? new Readiness.Clear(row, intensity())
                : new Readiness.ClearWithLimits(row, intensity(), limits);
    }

    /** Vigorous work only where nothing speaks against it and it is wanted or free to choose. */
    private Intensity intensity() {
        boolean waits = row == Row.B2V && !clearance.counts();
        boolean unsure = row == Row.B3 && answers.wantsVigorous().unknown();
        return waits || unsure ? Intensity.MODERATE : row.intensity();
    }

    private List<Finding> waitsForClinician() {
        return switch (row) {
            case A1, B1 -> answers.symptomsCleared().yes() ? routineWaits() : join(symptomFindings(), routineWaits());
            case A2 ->
                diseases(Answer.YES).isEmpty() || clearance.counts()
                        ? routineWaits()
                        : join(diseaseFindings(), routineWaits());
            case A3, B2, B2V, B3 -> routineWaits();
        };
    }

    private List<Finding> routineWaits() {
        return flags.routine(RedFlagRule.Meanwhile.NOTHING);
    }

    private List<Finding> waitsForClient() {
        List<Finding> open = new ArrayList<>(flags.toAsk(RedFlagRule.Meanwhile.NOTHING));
        symptoms(Answer.UNKNOWN).forEach(sign -> open.add(unanswered(sign.words())));
        if (row == Row.A2 && diseases(Answer.YES).isEmpty()) {
            diseases(Answer.UNKNOWN).forEach(disease -> open.add(unanswered(disease.words())));
        }
        return open;
    }

    private List<Finding> limits() {
        List<Finding> limits = new ArrayList<>(clearedFindings());
        limits.addAll(flags.routine(RedFlagRule.Meanwhile.GOES_ON));
        limits.addAll(flags.toAsk(RedFlagRule.Meanwhile.GOES_ON));
        if (row == Row.B2V && !clearance.counts()) {
            limits.add(new Finding(row.rule(), "Vigorous work waits for a clinician; moderate work goes on."));
            clearance.lapse().ifPresent(limits::add);
        }
        return List.copyOf(limits);
    }

    /** A clearance is named on the result, so that nobody forgets that it rests on one. */
    private List<Finding> clearedFindings() {
        String from = "A clinician has cleared ";
        return switch (row) {
            case A1, B1 -> List.of(new Finding(row.rule(), from + "the symptoms; start light, go up as tolerated."));
            case A2 -> List.of(new Finding(row.rule(), from + "exercise this year; start light, go up as tolerated."));
            case A3, B2, B2V, B3 -> List.of();
        };
    }

    private List<Finding> symptomFindings() {
        return symptoms(Answer.YES).stream()
                .map(sign -> new Finding(row.rule(), sign.words() + "."))
                .toList();
    }

    private List<Finding> diseaseFindings() {
        return Stream.concat(
                        diseases(Answer.YES).stream()
                                .map(disease ->
                                        new Finding(row.rule(), disease.words() + ", and not used to exercise.")),
                        clearance.lapse().stream())
                .toList();
    }

    private List<Symptom> symptoms(Answer answer) {
        return List.copyOf(answers.symptoms().all(Symptom.class, answer));
    }

    private List<Disease> diseases(Answer answer) {
        return List.copyOf(answers.knownDisease().all(Disease.class, answer));
    }

    static List<Statement> stated() {
        return List.of(
                Area.state(
                        UNANSWERED,
                        Area.READINESS,
                        "A question without an answer is never read as no: it waits for the client, and an unknown disease counts as one."));
    }

    private static Finding unanswered(String words) {
        return new Finding(UNANSWERED, "Not answered yet: " + words + ".");
    }

    private static List<Finding> join(List<Finding> one, List<Finding> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }
}
