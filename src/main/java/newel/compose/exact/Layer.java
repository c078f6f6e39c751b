package newel.compose.exact;

import java.util.Arrays;

/**
 * The labels that end in one slot, found by what their future depends on. A label is an index into the arrays; {@code
 * parent} is an index into the layer before.
 */
final class Layer {
    private static final int FIRST_SIZE = 256;
    private static final int EMPTY = -1;

    private final Layer before;
    int size;
    long[] place;
    long[] needs;
    long[] low;
    long[] high;
    long[] value;
    long[] bound;
    int[] parent;
    int[] candidate;
    private int[] table;

    /** As roomy as the layer before, because layers are often of a size. */
    Layer(Layer before) {
        this.before = before;
        int room = Math.max(FIRST_SIZE, before == null ? 0 : Integer.highestOneBit(before.size) << 1);
        place = new long[room];
        needs = new long[room];
        low = new long[room];
        high = new long[room];
        value = new long[room];
        bound = new long[room];
        parent = new int[room];
        candidate = new int[room];
        table = filled(2 * room);
    }

    private static int[] filled(int size) {
        int[] table = new int[size];
        Arrays.fill(table, EMPTY);
        return table;
    }

    /** Adds a label, or keeps the better of it and the one that leaves the same future. */
    void add(Label label) {
        int slot = slot(label.place, label.needs, label.low, label.high);
        int known = table[slot];
        if (known == EMPTY) {
            table[slot] = size;
            write(size++, label);
            grow();
        } else if (label.value > value[known] || label.value == value[known] && comesFirst(label, known)) {
            write(known, label);
        }
    }

    private void write(int at, Label label) {
        place[at] = label.place;
        needs[at] = label.needs;
        low[at] = label.low;
        high[at] = label.high;
        value[at] = label.value;
        bound[at] = label.bound;
        parent[at] = label.parent;
        candidate[at] = label.candidate;
    }

    private int slot(long place, long needs, long low, long high) {
        long mixed = (place * 0x9E3779B97F4A7C15L ^ needs) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ mixed >>> 31 ^ low) * 0x94D049BB133111EBL;
        mixed = (mixed ^ mixed >>> 29 ^ high) * 0x9E3779B97F4A7C15L;
        int mask = table.length - 1;
        int slot = (int) (mixed >>> 32) & mask;
        while (table[slot] != EMPTY && !same(table[slot], place, needs, low, high)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private boolean same(int at, long place, long needs, long low, long high) {
        return this.place[at] == place && this.needs[at] == needs && this.low[at] == low && this.high[at] == high;
    }

    private void grow() {
        if (size == place.length) {
            resize(2 * size);
        }
        if (2 * size > table.length) {
            rehash();
        }
    }

    private void resize(int length) {
        place = Arrays.copyOf(place, length);
        needs = Arrays.copyOf(needs, length);
        low = Arrays.copyOf(low, length);
        high = Arrays.copyOf(high, length);
        value = Arrays.copyOf(value, length);
        bound = Arrays.copyOf(bound, length);
        parent = Arrays.copyOf(parent, length);
        candidate = Arrays.copyOf(candidate, length);
    }

    private void rehash() {
        table = filled(2 * table.length);
        fillTable();
    }

    private void fillTable() {
        for (int i = 0; i < size; i++) {
            table[slot(place[i], needs[i], low[i], high[i])] = i;
        }
    }

    private boolean comesFirst(Label label, int known) {
        int order = before.order(label.parent, parent[known]);
        return order < 0 || order == 0 && label.candidate < candidate[known];
    }

    /** Compares the sequences of two labels, first slot first; candidates stand in the order of their ids. */
    private int order(int a, int b) {
        if (a == b) {
            return 0;
        }
        int order = before.order(parent[a], parent[b]);
        return order != 0 ? order : Integer.compare(candidate[a], candidate[b]);
    }

    /** Keeps the most promising, of equal ones those made first, and says the largest bound among the others. */
    long cut(int width) {
        long[] sorted = Arrays.copyOf(bound, size);
        Arrays.sort(sorted);
        long least = sorted[size - width];
        int room = width;
        for (int i = 0; i < size; i++) {
            room -= bound[i] > least ? 1 : 0;
        }
        long dropped = Tables.NEVER;
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (bound[i] > least || bound[i] == least && room-- > 0) {
                move(i, kept++);
            } else {
                dropped = Math.max(dropped, bound[i]);
            }
        }
        size = kept;
        if (table != null) {
            table = filled(table.length);
            fillTable();
        }
        return dropped;
    }

    private void move(int from, int to) {
        place[to] = place[from];
        needs[to] = needs[from];
        low[to] = low[from];
        high[to] = high[from];
        value[to] = value[from];
        bound[to] = bound[from];
        parent[to] = parent[from];
        candidate[to] = candidate[from];
    }

    /** The table is of no more use once the layer is complete. */
    void close() {
        table = null;
    }

    /** The candidates on the way to a label. */
    int[] path(int label, int slots) {
        int[] path = new int[slots];
        Layer layer = this;
        int at = label;
        for (int s = slots - 1; s >= 0; s--) {
            path[s] = layer.candidate[at];
            at = layer.parent[at];
            layer = layer.before;
        }
        return path;
    }
}
