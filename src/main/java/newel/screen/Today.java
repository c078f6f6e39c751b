package newel.screen;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import newel.client.Client;
import newel.client.DayAnswers;
import newel.client.RedFlag;
import newel.source.Finding;

/** Whether the session of a day goes on. */
public sealed interface Today {
    List<Finding> reasons();

    /** @param glucose null when it was not measured, which counts only for those who take medicine that can make it low */
    static Today of(DayAnswers answers, Glucose glucose, Client client, Choices choices, LocalDate today) {
        Optional<SugarToday> sugar = SugarToday.asked(client) ? Optional.of(SugarToday.of(glucose)) : Optional.empty();
        return DayCheck.judge(answers, sugar, Screening.of(client, choices, today), choices);
    }

    /** Signs that stay up beyond the day, until somebody has looked. */
    static Set<RedFlag> beyond(DayAnswers answers) {
        return DayRule.ALL.stream()
                .filter(each -> answers.signs().to(each.sign()).yes())
                .flatMap(each -> each.flag().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(RedFlag.class)));
    }

    /** @param reasons what is done first or along the way, such as carbohydrate; empty when there is nothing */
    record Go(List<Finding> reasons) implements Today {}

    /** Light work only: easy talk, no resistance, nothing new. */
    record LightOnly(List<Finding> reasons) implements Today {}

    record NotToday(Whom whom, List<Finding> reasons) implements Today {}

    /** Whom to call, most urgent first. */
    enum Whom {
        EMERGENCY("Call the emergency number now"),
        DOCTOR_TODAY("A doctor or an urgent clinic today"),
        DOCTOR_SOON("An appointment within two weeks"),
        NOBODY("Nobody has to be called: put it right, and check again");

        private final String words;

        Whom(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        static Whom of(Urgency urgency) {
            return switch (urgency) {
                case EMERGENCY -> EMERGENCY;
                case SAME_DAY -> DOCTOR_TODAY;
                case ROUTINE -> DOCTOR_SOON;
            };
        }

        Whom higher(Whom other) {
            return compareTo(other) <= 0 ? this : other;
        }
    }
}
