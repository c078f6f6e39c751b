package newel.program;

import newel.compose.Session;

/** The outcome of a change that the instructor asked for. */
public sealed interface Edit {
    /** @param reason says in a sentence what was done */
    record Made(Session session, String reason) implements Edit {}

    /** @param why what stands against it and what to do instead */
    record Refused(String why) implements Edit {}
}
