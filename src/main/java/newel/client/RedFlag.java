package newel.client;

/**
 * Signs asked about before anything else, in our own words. What each one calls for is said in the screening rules. H1 to H5
 * are illnesses that are not settled: nothing begins while one of them holds.
 */
public enum RedFlag implements Sign {
    CHEST_PAIN_NOW("E1", "Chest pain or pressure at rest, or that does not go within minutes of stopping"),
    SUDDEN_BREATHLESSNESS("E2", "Sudden bad breathlessness, or breathless with a swollen leg or chest pain"),
    FACE_ARM_SPEECH("E3", "Face dropped, arm weak, speech or sight changed, or suddenly confused, even if it passed"),
    COLLAPSE_ON_EFFORT("E4", "Collapsed during effort, or with chest pain or a racing heart"),
    SADDLE_NUMBNESS("E5", "Numb between the legs, new trouble with bladder or bowel, or pain or weakness in both legs"),
    FAST_WEAKENING("E6", "Legs or arms, or walking, getting weaker fast"),
    BROKEN_HIP_SIGNS("E7", "Cannot put weight on a leg after a fall, or a limb looks out of shape"),
    HEAD_INJURY("E8", "Hit the head and takes blood thinners, or was sick, drowsy or had a fit after it"),
    SUDDEN_SEVERE("E9", "Worst sudden headache, a cold pale painful limb, heavy bleeding, or a first fit"),
    LOW_SUGAR_NOT_LIFTING("E10", "Low sugar that does not lift after two treatments, or sick with ketones"),
    FEVER_AND_CONFUSED("E11", "Fever or an infection, and confused, breathing fast or skin that looks blotchy"),
    ONE_LEG_SWELLING("D1", "One leg or calf swollen, warm, red or sore"),
    FEVER_WITH_PAIN("D2", "Fever with back or joint pain, a hot swollen joint, or feeling very ill"),
    NEW_SPINE_PAIN("D3", "New bad back pain with thin bones, steroids or a small knock"),
    CHANGED_ANGINA("D4", "Chest pain that is new or comes with less effort, or a new uneven or very fast pulse"),
    NEW_BREATHLESSNESS("D5", "New breathlessness, breathless lying flat, new ankle swelling, or 2 kg gained in 3 days"),
    FALL_WITH_INJURY("D6", "A fall that did harm, more than one fall in a week, or moving less well since a fall"),
    FAINTED("D7", "Fainted, or new pounding of the heart"),
    VERY_HIGH_PRESSURE("D8", "Blood pressure of 180/110 or more"),
    EYE_AFTER_SURGERY("D9", "New loss of sight, flashes or eye pain after an eye operation"),
    FOOT_ULCER("D10", "An open sore on the foot, or a hot swollen foot with diabetes"),
    WEIGHT_LOSS_OR_SWEATS("R1", "Weight loss without reason, night sweats, or new bone pain after a cancer"),
    NIGHT_PAIN("R2", "Pain at night that no position eases, or pain for over 4 weeks that gets no better"),
    OLD_SYMPTOM_UNCHECKED("R3", "One of the heart or lung signs for a long time, never looked at"),
    RAISED_PRESSURE("R4", "Blood pressure of 140/90 or more time after time, not known to the doctor"),
    REPEATED_FALLS("R5", "Two or more falls in 12 months"),
    WEAK_OR_SLOW("R6", "Weak grip, slow rise from a chair, or slow walk when tested"),
    LEAKING_OR_BULGE("R7", "New leaking, or a bulge down below"),
    MEMORY_OR_MOOD("R8", "Memory or mood changed so that it is not safe"),
    RECENT_CLOT_OR_HEART_ATTACK("H1", "A clot on the lung in the last 4 weeks, or a heart attack in the last 3 weeks"),
    RHYTHM_NOT_SETTLED("H2", "A heart rhythm that the doctor has not got under control"),
    HEART_NOT_SETTLED("H3", "Chest pain or heart failure that has got worse lately, or breath worse over 3 to 5 days"),
    VALVE_OR_INFLAMMATION("H4", "A very narrow heart valve, or an inflamed heart, heart sac or vein"),
    DIABETES_NOT_SETTLED("H5", "Diabetes that the doctor has not got under control");

    private final String code;
    private final String words;

    RedFlag(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String words() {
        return words;
    }
}
