package newel.web.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import newel.People;
import newel.assess.Guides;
import newel.client.Answer;
import newel.client.Answers;
import newel.client.Client;
import newel.client.Disease;
import newel.client.FallsAnswers;
import newel.client.ReadinessAnswers;
import newel.client.RedFlag;
import newel.client.Symptom;
import newel.client.Vitals;
import newel.limit.Preset;
import newel.limit.Presets;
import newel.practice.Rulebook;
import newel.screen.Choices;
import newel.screen.FallsSet;
import newel.screen.PainZones;
import newel.screen.RestSet;
import newel.screen.Rules;
import newel.screen.Screening;
import newel.screen.Stated;
import newel.source.Finding;
import newel.source.Rule;
import newel.source.Statement;
import org.junit.jupiter.api.Test;

/** That no rule is left out: by the lists, by the fields, and by what results cite. */
class RulebookTest {
    private static final Presets PRESETS = Presets.read();
    private static final Rulebook BOOK = Shipped.rulebook(PRESETS);
    private static final Map<String, Rule> LISTED =
            BOOK.all().stream().map(Statement::rule).collect(Collectors.toMap(Rule::id, rule -> rule));

    @Test
    void every_list_of_rules_is_in_the_book() {
        List<Rule> rules =
                new ArrayList<>(Rules.all().stream().map(Stated::rule).toList());
        rules.addAll(Guides.shipped().rules());
        for (RestSet set : RestSet.values()) {
            rules.addAll(new Choices(set, FallsSet.WIDER, PainZones.HIGHER).rules());
        }

        assertTrue(rules.size() > 150);
        assertEquals(List.of(), missing(rules));
    }

    @Test
    void every_restriction_of_every_preset_is_in_the_book() {
        List<String> shipped = PRESETS.all().stream()
                .flatMap(preset -> preset.restrictions().stream())
                .map(Preset.Restriction::source)
                .sorted()
                .toList();
        List<String> listed = BOOK.all().stream()
                .filter(each -> each.subject().startsWith("Limits: "))
                .map(each -> each.rule().citation())
                .sorted()
                .toList();

        assertEquals(shipped, listed);
    }

    @Test
    void every_rule_that_a_class_holds_is_in_the_book() throws ReflectiveOperationException {
        JavaClasses newel = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("newel");
        List<Rule> held = new ArrayList<>();
        for (JavaClass each : newel) {
            for (JavaField field : each.getFields()) {
                if (field.getRawType().isEquivalentTo(Rule.class)
                        && field.getModifiers().toString().contains("STATIC")) {
                    Field reflected = field.reflect();
                    reflected.setAccessible(true);
                    held.add((Rule) reflected.get(null));
                }
            }
        }

        assertTrue(held.size() > 20, "found " + held.size());
        assertEquals(List.of(), missing(held));
    }

    @Test
    void no_result_cites_a_rule_that_the_book_does_not_hold() {
        long seed = 20_260_303;
        Random random = new Random(seed);
        Map<String, Rule> cited = new TreeMap<>();
        List<Client> people = new ArrayList<>(People.all());
        for (int i = 0; i < 400; i++) {
            people.add(anybody(random));
        }
        for (Client person : people) {
            for (RestSet set : RestSet.values()) {
                for (FallsSet falls : FallsSet.values()) {
                    Choices choices = new Choices(set, falls, PainZones.LOWER);
                    Screening.of(person, choices, People.TODAY).reasons().stream()
                            .map(Finding::rule)
                            .forEach(rule -> cited.put(rule.id(), rule));
                }
            }
        }

        assertTrue(cited.size() > 60, "cited " + cited.keySet());
        assertEquals(List.of(), missing(cited.values().stream().toList()), "seed " + seed);
    }

    @Test
    void every_rule_says_something_and_where_it_is_from() {
        Set<String> empty = new TreeSet<>();
        for (Statement each : BOOK.all()) {
            if (each.says().isBlank()
                    || each.subject().isBlank()
                    || each.rule().citation().isBlank()) {
                empty.add(each.rule().id());
            }
        }
        assertEquals(Set.of(), empty);
    }

    private static List<String> missing(List<Rule> rules) {
        return rules.stream()
                .filter(rule -> !rule.equals(LISTED.get(rule.id())))
                .map(rule -> rule.id() + " (" + rule.citation() + ")")
                .distinct()
                .sorted()
                .toList();
    }

    private static Client anybody(Random random) {
        Client c = People.fitAndBored();
        ReadinessAnswers readiness = new ReadinessAnswers(
                answer(random),
                answers(random, Disease.values()),
                answers(random, Symptom.values()),
                random.nextBoolean() ? answers(random, RedFlag.values()) : Answers.onlyYes(RedFlag.class),
                answer(random),
                answer(random),
                answer(random),
                answer(random));
        FallsAnswers falls = new FallsAnswers(
                random.nextInt(4) == 0 ? null : random.nextInt(4),
                answer(random),
                answer(random),
                answer(random),
                answer(random),
                answer(random),
                answer(random));
        Vitals vitals = new Vitals(
                70 + random.nextInt(150),
                40 + random.nextInt(90),
                30 + random.nextInt(110),
                80 + random.nextInt(20),
                36 + random.nextDouble() * 4,
                random.nextInt(40),
                random.nextDouble() * 4,
                answer(random));
        return new Client(
                c.id(), c.profile(), c.home(), c.wishes(), readiness, falls, vitals, c.measures(), c.limitations());
    }

    private static Answer answer(Random random) {
        return Answer.values()[random.nextInt(3)];
    }

    /** Mostly no, so that every level gets its turn. */
    private static <Q extends Enum<Q>> Answers<Q> answers(Random random, Q[] questions) {
        Map<Q, Answer> given = new java.util.HashMap<>();
        for (Q each : questions) {
            given.put(each, random.nextInt(12) == 0 ? answer(random) : Answer.NO);
        }
        return new Answers<>(given);
    }
}
