package newel.client;

import static newel.catalogue.Purpose.*;
import static newel.catalogue.Region.*;

import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import newel.catalogue.Purpose;
import newel.catalogue.Purposes;
import newel.catalogue.Region;

/** A daily thing the client wants to do, and what to train for it: weights 0 to 3 (design choice, all of them). */
public enum Goal {
    CHAIR_STAND("Get up from a chair", Map.of(LEGS, 3, HIPS, 3, ABDOMEN, 1), Set.of(ANKLE)),
    STAIRS("Climb stairs", Map.of(LEGS, 3, HIPS, 2, BALANCE, 2, PULSE, 1), Set.of(ANKLE)),
    POSTURE("Stand and sit taller", Map.of(BACK, 3, SHOULDERS, 1, ABDOMEN, 1), Set.of(UPPER_BACK, SHOULDER_BLADE)),
    HIGH_SHELF("Reach a high shelf", Map.of(SHOULDERS, 3, BACK, 1, BALANCE, 1), Set.of(SHOULDER, UPPER_BACK)),
    SHOPPING_BAG("Carry a shopping bag", Map.of(ARMS, 3, BACK, 2, SHOULDERS, 1, LEGS, 1), Set.of(WRIST)),
    LOOK_BEHIND("Look behind you", Map.of(ABDOMEN, 1, BACK, 1), Set.of(NECK, UPPER_BACK)),
    SOCKS("Put on socks and shoes", Map.of(HIPS, 1, ABDOMEN, 1), Set.of(HIP, LOW_BACK)),
    WALK_FURTHER("Walk further", Map.of(PULSE, 3, LEGS, 2, HIPS, 2, BALANCE, 1), Set.of(ANKLE)),
    STAND_AT_SINK("Stand at the sink for longer", Map.of(LEGS, 2, HIPS, 2, BACK, 2, BALANCE, 1), Set.of()),
    STEADY("Feel steady on your feet", Map.of(BALANCE, 3, LEGS, 2, HIPS, 2), Set.of(ANKLE)),
    LESS_STIFF("Feel less stiff", Map.of(), Set.of(SHOULDER, UPPER_BACK, HIP, KNEE, ANKLE, NECK)),
    IN_AND_OUT_OF_BED("Turn over and get out of bed", Map.of(ABDOMEN, 2, ARMS, 2, HIPS, 2), Set.of(LOW_BACK)),
    WASH_HAIR("Wash and comb your hair", Map.of(SHOULDERS, 2, ARMS, 1), Set.of(SHOULDER, ELBOW)),
    OPEN_JARS("Open jars and wring a cloth", Map.of(ARMS, 3), Set.of(WRIST)),
    BREATH("Be less out of breath", Map.of(PULSE, 3, LEGS, 1), Set.of(RIBS));

    /** From this weight on a purpose is a main or a strong helping one (design choice). */
    private static final int STRONG = 2;

    private final String words;
    private final Purposes purposes;

    Goal(String words, Map<Purpose, Integer> weights, Set<Region> mobility) {
        this.words = words;
        this.purposes = new Purposes(weights, mobility);
    }

    /** As said to the client. */
    public String words() {
        return words;
    }

    public Purposes purposes() {
        return purposes;
    }

    /** Whether something trains what the goal mainly needs, or keeps a region moving that it needs moving. */
    public boolean servedBy(Purposes trained) {
        boolean strengthens = Arrays.stream(Purpose.values())
                .anyMatch(each -> purposes.weight(each) >= STRONG && trained.weight(each) >= STRONG);
        return strengthens || !Collections.disjoint(purposes.mobility(), trained.mobility());
    }
}
