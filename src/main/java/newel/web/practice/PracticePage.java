package newel.web.practice;

import java.util.List;
import newel.web.form.Ask;
import newel.web.form.Faults;

/** @param choices changes of the settings so far, oldest first */
public record PracticePage(List<Ask> asks, Faults faults, List<String> changes) {}
