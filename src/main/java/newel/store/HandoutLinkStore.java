package newel.store;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.Base64;
import java.util.Optional;
import newel.program.ProgramId;
import org.jdbi.v3.core.Jdbi;

/** Links under which a client opens the newest handout of one program. */
public final class HandoutLinkStore {
    /** 160 bits: not to be guessed. */
    private static final int TOKEN_BYTES = 20;

    private final SecureRandom random = new SecureRandom();
    private final Jdbi jdbi;
    private final Clock clock;

    HandoutLinkStore(Jdbi jdbi, Clock clock) {
        this.jdbi = jdbi;
        this.clock = clock;
    }

    /** The program's link that still opens, if there is one. */
    public Optional<String> of(ProgramId program) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select token from handout_link
                        where program_id = :program and withdrawn_at is null
                        order by made_at desc""")
                .bind("program", program.value())
                .mapTo(String.class)
                .findFirst());
    }

    public String make(ProgramId program) {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        jdbi.useHandle(handle -> handle.createUpdate("""
                        insert into handout_link (token, program_id, made_at) values (:token, :program, :now)""")
                .bind("token", token)
                .bind("program", program.value())
                .bind("now", clock.instant().toString())
                .execute());
        return token;
    }

    /** No link of this program opens any more. */
    public void withdraw(ProgramId program) {
        jdbi.useHandle(handle -> handle.createUpdate("""
                        update handout_link set withdrawn_at = :now
                        where program_id = :program and withdrawn_at is null""")
                .bind("program", program.value())
                .bind("now", clock.instant().toString())
                .execute());
    }

    /** The program that a token opens; empty when there is none such or it was withdrawn. */
    public Optional<ProgramId> opens(String token) {
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select program_id from handout_link
                        where token = :token and withdrawn_at is null""")
                .bind("token", token)
                .mapTo(String.class)
                .findOne()
                .map(ProgramId::new));
    }
}
