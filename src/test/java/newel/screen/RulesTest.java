package newel.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import newel.client.RedFlag;
import newel.source.Rule;
import newel.source.Statement;
import org.junit.jupiter.api.Test;

class RulesTest {
    @Test
    void every_rule_has_an_id_of_its_own_a_source_and_words() {
        Set<String> ids = new HashSet<>();
        List<String> twice = new ArrayList<>();
        for (Statement each : Rules.all()) {
            if (!ids.add(each.rule().id())) {
                twice.add(each.rule().id());
            }
            assertTrue(each.rule().citation().length() > 2, each.toString());
            assertTrue(each.says().length() > 10, each.toString());
        }
        assertEquals(List.of(), twice);
    }

    @Test
    void every_area_has_rules() {
        Set<String> areas = new HashSet<>();
        Rules.all().forEach(each -> areas.add(each.subject()));

        assertEquals(Arrays.stream(Area.values()).map(Area::words).collect(Collectors.toSet()), areas);
    }

    @Test
    void every_red_flag_and_every_choice_of_a_practice_is_listed() {
        Set<Rule> listed = new HashSet<>();
        Rules.all().forEach(each -> listed.add(each.rule()));

        for (RedFlag flag : RedFlag.values()) {
            assertEquals(flag, RedFlagRule.of(flag).flag());
            assertTrue(listed.contains(RedFlagRule.of(flag).rule()), flag.code());
        }
        Arrays.stream(FallsSet.values()).forEach(each -> assertTrue(listed.containsAll(each.rules())));
        Arrays.stream(PainZones.values()).forEach(each -> assertTrue(listed.containsAll(each.rules())));
        Arrays.stream(RestSet.values()).forEach(each -> assertTrue(listed.containsAll(each.rules())));
    }
}
