package newel.client;

import newel.body.Side;

/**
 * How a test was done.
 *
 * @param unable tried and could not, or stopped: worse than any number
 * @param armsUsed the arms were used where the test forbids it
 * @param side null where a test has no side
 */
public record Done(boolean unable, boolean armsUsed, Side side, Aid aid) {
    public static final Done AS_TOLD = new Done(false, false, null, Aid.NONE);
}
