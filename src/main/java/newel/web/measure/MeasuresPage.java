package newel.web.measure;

import java.util.Arrays;
import java.util.List;
import newel.assess.Course;
import newel.assess.Guide;
import newel.assess.Guides;
import newel.assess.LowStrength;
import newel.assess.StartingLevels;
import newel.client.Client;
import newel.client.Measure;
import newel.store.MeasuredStore;
import newel.web.Practice;
import newel.web.client.ClientHeader;
import newel.web.form.Choice;

/**
 * All that was measured of a client, and the tests to choose from.
 *
 * @param waiting what screening asks to wait for, before anybody is tested
 * @param strength what grip, chair stands and walk say together; empty when it cannot be said
 */
public record MeasuresPage(
        ClientHeader header,
        Waiting waiting,
        List<MeasureCard> cards,
        String strength,
        List<StartLine> starts,
        String startRule,
        List<Test> tests) {
    /** A test to choose. */
    public record Test(String id, String name, String tells, boolean done) {}

    static MeasuresPage of(Client client, List<MeasuredStore.Kept> kept, Practice practice) {
        Course course = Course.of(practice.guides(), client);
        return new MeasuresPage(
                ClientHeader.of(client, practice),
                Waiting.of(practice.screening(client)),
                Arrays.stream(Measure.values())
                        .flatMap(each -> MeasureCard.of(client, course, each, of(kept, each)).stream())
                        .toList(),
                strength(course.lowStrength()),
                StartLine.of(StartingLevels.of(client, practice.today())),
                StartingLevels.RULE.citation(),
                Guides.shipped().all().stream()
                        .map(guide -> test(guide, course))
                        .toList());
    }

    private static List<MeasuredStore.Kept> of(List<MeasuredStore.Kept> kept, Measure measure) {
        return kept.stream()
                .filter(each -> each.measured().measure() == measure)
                .toList();
    }

    private static String strength(LowStrength strength) {
        if (strength.outcome() == LowStrength.Outcome.INSUFFICIENT_DATA) {
            return "";
        }
        return strength.outcome().words() + (strength.lowPerformance() ? " The walk is slow as well." : "");
    }

    private static Test test(Guide guide, Course course) {
        return new Test(
                Choice.of(guide.measure()),
                guide.measure().words(),
                guide.how().tells(),
                course.newest(guide.measure()).isPresent());
    }
}
