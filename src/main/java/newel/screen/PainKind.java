package newel.screen;

import static newel.client.RedFlag.*;

import java.util.Optional;
import newel.client.RedFlag;

/** What kind of pain it is. The pain-monitoring model was made for tendons and the knee-cap, and never for what stands below. */
public enum PainKind {
    JOINT_OR_TENDON("A joint, a tendon or a muscle", null),
    CHEST("The chest, or jaw or arm with it", CHEST_PAIN_NOW),
    CALF("One calf, warm, swollen or sore", ONE_LEG_SWELLING),
    SPINE_WITH_NERVE("The back or neck, with numbness or weakness in arms, legs or between the legs", FAST_WEAKENING),
    PERHAPS_BROKEN("After a fall or knock: cannot put weight on it, or it looks out of shape", BROKEN_HIP_SIGNS),
    SPINE_PERHAPS_BROKEN("New and bad in the back, with thin bones, steroids or a small knock", NEW_SPINE_PAIN),
    BONE_WITH_CANCER("A bone, in somebody who has or had cancer", WEIGHT_LOSS_OR_SWEATS);

    private final String words;
    private final RedFlag flag;

    PainKind(String words, RedFlag flag) {
        this.words = words;
        this.flag = flag;
    }

    public String words() {
        return words;
    }

    /** The sign that this pain is treated as; empty where the model may be used. */
    public Optional<RedFlagRule> sign() {
        return Optional.ofNullable(flag).map(RedFlagRule::of);
    }
}
