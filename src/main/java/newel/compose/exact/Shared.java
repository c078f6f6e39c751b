package newel.compose.exact;

/**
 * The families that occur in two slots or more, each a bit of two longs. Only these can ever be chosen twice, and a family
 * counts in a label only as long as it occurs later.
 */
final class Shared {
    private static final int MOST = 128;

    /** Bit of each family, −1 when it occurs in one slot only. */
    final int[] bit;
    /** The family of each bit. */
    final int[] family;

    private final long[] low;
    private final long[] high;
    /** Bits of the families that occur after slot s, the first 64 and the others. */
    final long[] laterLow;

    final long[] laterHigh;

    Shared(Column[] columns, int families) {
        int[] slots = new int[families];
        for (Column column : columns) {
            boolean[] seen = new boolean[families];
            for (int f : column.family) {
                if (f != Families.NONE && !seen[f]) {
                    seen[f] = true;
                    slots[f]++;
                }
            }
        }
        bit = new int[families];
        family = java.util.stream.IntStream.range(0, families)
                .filter(f -> slots[f] > 1)
                .toArray();
        if (family.length > MOST) {
            throw new IllegalArgumentException(family.length + " families in two slots or more; at most " + MOST);
        }
        java.util.Arrays.fill(bit, -1);
        low = new long[families];
        high = new long[families];
        for (int b = 0; b < family.length; b++) {
            bit[family[b]] = b;
            low[family[b]] = b < Long.SIZE ? 1L << b : 0;
            high[family[b]] = b < Long.SIZE ? 0 : 1L << (b - Long.SIZE);
        }
        laterLow = new long[columns.length];
        laterHigh = new long[columns.length];
        for (int s = columns.length - 2; s >= 0; s--) {
            laterLow[s] = laterLow[s + 1];
            laterHigh[s] = laterHigh[s + 1];
            for (int f : columns[s + 1].family) {
                laterLow[s] |= low(f);
                laterHigh[s] |= high(f);
            }
        }
    }

    int count() {
        return family.length;
    }

    long low(int f) {
        return f == Families.NONE ? 0 : low[f];
    }

    long high(int f) {
        return f == Families.NONE ? 0 : high[f];
    }
}
