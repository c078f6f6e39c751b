package newel.web.referral;

import java.util.Locale;
import newel.catalogue.Reading;
import newel.referral.ClientCopy;

/** @param sent it stands as it went out; before, it is a draft */
public record CopyPage(ClientCopy copy, boolean sent, String back) {

    /** How hard our own words read; what the letter says about the client is repeated as it stands there. */
    public String grade() {
        return String.format(
                Locale.ROOT, "%.1f", Math.max(0, Reading.of(copy.words()).grade()));
    }
}
