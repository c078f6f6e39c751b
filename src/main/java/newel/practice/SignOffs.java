package newel.practice;

import java.util.List;
import java.util.Optional;
import newel.source.Statement;

/** Every sign-off that was not taken back, the newest last. */
public record SignOffs(List<SignOff> all) {
    public SignOffs {
        all = List.copyOf(all);
    }

    public Standing of(Statement statement) {
        List<SignOff> own = all.stream()
                .filter(each -> each.rule().equals(statement.rule().id()))
                .toList();
        Optional<SignOff> same = own.stream()
                .filter(each -> each.signed().equals(statement.signed()))
                .reduce((older, newer) -> newer);
        if (same.isPresent()) {
            return new Standing.Signed(same.get());
        }
        return own.isEmpty() ? new Standing.Needed() : new Standing.Changed(own.getLast());
    }
}
