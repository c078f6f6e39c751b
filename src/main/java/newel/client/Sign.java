package newel.client;

/** Something an intake asks about by yes, no or not known. */
public sealed interface Sign permits Disease, Symptom, RedFlag, PulseGuard, FallsItem {
    /** What it is called where it is written down; stays when its words are changed. */
    String code();

    /** The question, in plain words. */
    String words();
}
