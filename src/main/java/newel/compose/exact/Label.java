package newel.compose.exact;

/** A partial sequence on its way into a layer; one object serves all, because millions are made. */
final class Label {
    long place;
    long needs;
    long low;
    long high;
    long value;
    long bound;
    int parent;
    int candidate;

    /** Local state, grid seconds gone and the two runs in one number. */
    static long place(int state, int gone, int standing, int armsUp) {
        return state | (long) gone << 16 | (long) standing << 32 | (long) armsUp << 48;
    }

    static int state(long place) {
        return (int) place & 0xffff;
    }

    static int gone(long place) {
        return (int) (place >>> 16) & 0xffff;
    }

    static int standing(long place) {
        return (int) (place >>> 32) & 0xffff;
    }

    static int armsUp(long place) {
        return (int) (place >>> 48);
    }
}
