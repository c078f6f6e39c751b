package newel.referral;

import java.time.LocalDate;
import java.util.List;
import newel.screen.Urgency;
import newel.source.Finding;

/**
 * A drafted note to a clinician, on one page.
 *
 * @param to who should read it
 * @param situation one sentence: why this is written and what is asked
 * @param background what the client told, and says that it was told
 * @param findings what was found, each with its figure; the rules behind them are for the instructor, not for the paper
 * @param question the one question
 * @param meanwhile what goes on until the answer is there
 */
public record Note(
        LocalDate date,
        Urgency urgency,
        String to,
        String name,
        LocalDate birthDate,
        String situation,
        List<String> background,
        List<Finding> findings,
        String question,
        String meanwhile,
        String consent) {}
