package newel.web.limitation;

import java.util.List;
import newel.web.client.ClientHeader;
import newel.web.form.Ask;
import newel.web.form.Faults;

/**
 * The limits of one limitation, to tighten or loosen.
 *
 * @param ordered a clinician ordered it: loosening asks for a reason
 * @param reasons written for earlier changes
 */
public record LimitsPage(
        ClientHeader header,
        String id,
        String words,
        boolean ordered,
        List<Ask> asks,
        Faults faults,
        List<String> reasons) {}
