package newel.compose.exact;

/** Points and tie weights in one whole number: the points count 2^14 each, the ties of a solution stay below that. */
final class Ties {
    private static final int BITS = 14;
    static final long POINT = 1L << BITS;

    static long value(int points, int slot, String id, int slots) {
        long most = POINT / slots;
        return points * POINT + Long.remainderUnsigned(mixed(31L * slot + 1, id), most);
    }

    static int points(long value) {
        return (int) (value >> BITS);
    }

    /** The finaliser of SplitMix64 over the id's characters (Steele, Lea and Flood 2014): any well-mixing function serves. */
    private static long mixed(long start, String id) {
        long mixed = start;
        for (int i = 0; i < id.length(); i++) {
            mixed = (mixed ^ id.charAt(i)) * 0x9E3779B97F4A7C15L;
            mixed ^= mixed >>> 29;
        }
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    private Ties() {}
}
