package newel.referral;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words that name or guess a disease. The notes' own words hold none of them: they tell what was seen, measured or told. */
public final class DiagnosticWords {
    private static final List<String> STEMS = List.of(
            "angina",
            "arrhythmi",
            "arthrit",
            "arthros",
            "cauda equina",
            "claudication",
            "dementia",
            "depressi",
            "embol",
            "fibrillation",
            "fractur",
            "hypertens",
            "hypotens",
            "infarct",
            "ischaem",
            "ischem",
            "myelopath",
            "neuropath",
            "osteopor",
            "parkinson",
            "sarcopen",
            "sciatica",
            "stenosis",
            "suffers from",
            "suspected",
            "syncope",
            "syndrome",
            "tendin",
            "thrombo",
            "tumour",
            "tumor");

    private static final Pattern ANY = Pattern.compile("\\b(" + String.join("|", STEMS) + ")\\w*");

    /** Those that a text holds, as they stand in it. */
    public static List<String> in(String text) {
        return ANY.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(found -> found.group())
                .distinct()
                .toList();
    }

    private DiagnosticWords() {}
}
