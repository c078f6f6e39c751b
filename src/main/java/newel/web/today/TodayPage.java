package newel.web.today;

import java.util.List;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Faults;

/** The questions, and the checks made before. */
public record TodayPage(
        ClientHeader header, String base, String day, List<Ask> asks, Faults faults, List<Before> before) {
    public record Before(String path, String day, String tone, String words) {}
}
