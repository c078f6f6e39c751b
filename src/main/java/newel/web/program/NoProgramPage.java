package newel.web.program;

import java.util.List;
import newel.client.Client;
import newel.screen.Permission;
import newel.screen.Screening;
import newel.web.Practice;
import newel.web.client.ClientHeader;

/**
 * Before there is a program: what the draft will rest on, and the one act.
 *
 * @param conflict what cannot hold together, where a draft was tried and nothing came of it
 * @param may something may be made ready; while nothing may be done, nothing is drafted
 */
public record NoProgramPage(
        ClientHeader header,
        String base,
        List<String> face,
        int minutes,
        List<String> goals,
        List<String> conflict,
        boolean may) {
    static NoProgramPage of(Client client, Practice practice, List<String> conflict) {
        Screening screening = practice.screening(client);
        return new NoProgramPage(
                ClientHeader.of(client, practice),
                "/clients/" + client.id().value() + "/program",
                screening.face(),
                client.wishes().minutes(),
                client.wishes().goals().stream().map(goal -> goal.words()).toList(),
                Telling.lines(conflict),
                screening.permission() != Permission.NOTHING);
    }
}
