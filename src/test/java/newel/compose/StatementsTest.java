package newel.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import newel.source.Known;
import newel.source.Rule;
import newel.source.Statement;
import org.junit.jupiter.api.Test;

class StatementsTest {
    @Test
    void every_weight_is_told_with_its_points_and_its_reason() {
        Set<String> told = Statements.all().stream()
                .filter(each -> each.rule().id().startsWith("weight-"))
                .map(Statement::says)
                .collect(Collectors.toSet());

        assertEquals(Weight.values().length, told.size());
        for (Weight weight : Weight.values()) {
            assertTrue(
                    told.stream()
                            .anyMatch(says ->
                                    says.contains(Math.abs(weight.points()) + " point") && says.endsWith(weight.why())),
                    weight.why());
        }
    }

    @Test
    void points_lost_have_a_minus_sign() {
        assertTrue(Statements.all().stream()
                .map(Statement::says)
                .anyMatch(
                        "Take up: −1 point. Taking things up and putting them down breaks the flow a little."::equals));
    }

    @Test
    void a_time_and_an_effort_name_where_they_come_from() {
        assertTrue(Statements.all()
                .contains(new Statement(
                        new Rule("time-changeSide", "Newel", Known.COMMON_PRACTICE),
                        "How long things take",
                        "Change side: 5 seconds. Turning round or changing hands between the two sides.")));
        assertTrue(Statements.all()
                .contains(new Statement(
                        new Rule(
                                "met-standingStrength",
                                "Ainsworth et al. 2011, Med Sci Sports Exerc 43:1575-1581",
                                Known.SEEN),
                        "Effort of a week",
                        "Standing strength: 3.5 MET (entry 02054). A value of younger adults.")));
    }
}
