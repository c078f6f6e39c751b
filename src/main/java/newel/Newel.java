package newel;

/** Reads settings, wires the parts and starts. */
public final class Newel {
    public static void main(String[] args) {
        System.out.println("newel");
    }

    private Newel() {}
}
