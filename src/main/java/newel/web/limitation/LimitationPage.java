package newel.web.limitation;

import java.util.List;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Faults;

/** The form for one limitation. */
public record LimitationPage(ClientHeader header, List<Ask> asks, Faults faults, boolean program) {}
