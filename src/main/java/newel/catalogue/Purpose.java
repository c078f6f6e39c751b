package newel.catalogue;

/** What a movement may train: the seven muscle groups that the guidelines count, balance, and pulse. */
public enum Purpose {
    LEGS,
    HIPS,
    BACK,
    ABDOMEN,
    CHEST,
    SHOULDERS,
    ARMS,
    BALANCE,
    PULSE;

    public boolean muscleGroup() {
        return ordinal() < BALANCE.ordinal();
    }
}
