package newel.figure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** In grey print every neighbouring pair differs by a step of lightness (CIE L*, 0 black to 100 white). */
class TonesTest {
    /** A step that is told apart in print beside a white edge (design choice). */
    private static final double STEP = 7;

    private static final Pattern RULE = Pattern.compile("\\.([a-z0-9-]+) \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("(--[a-z-]+|fill): (#[0-9a-f]{6})");

    @Test
    void skin_shirt_and_trousers_of_every_look_differ() throws IOException {
        Map<String, String> css = css();
        List<String> close = new ArrayList<>();
        for (Look look : Looks.all()) {
            Map<String, Double> own = new HashMap<>();
            for (String style : look.style().split(" ")) {
                own.putAll(colours(css.get(style)));
            }
            compare(close, look.id(), own, "--skin", "--shirt");
            compare(close, look.id(), own, "--skin", "--trousers");
            compare(close, look.id(), own, "--skin", "--hair-tone");
            compare(close, look.id(), own, "--shirt", "--trousers");
            compare(close, look.id(), own, "--skin", "--crease");
            own.putAll(colours(css.get("picture")).entrySet().stream()
                    .filter(e -> e.getKey().equals("--shoe") || e.getKey().equals("--wood"))
                    .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
            compare(close, look.id(), own, "--trousers", "--shoe");
            compare(close, look.id(), own, "--trousers", "--wood");
            compare(close, look.id(), own, "--shirt", "--wood");
        }

        assertTrue(close.isEmpty(), String.join("\n", close));
    }

    @Test
    void parts_of_furniture_that_meet_differ() throws IOException {
        Map<String, String> css = css();
        List<String> close = new ArrayList<>();
        for (List<String> pair : List.of(
                List.of("t-counter", "t-counter-top"),
                List.of("t-counter-top", "t-worktop"),
                List.of("t-wall", "t-skirting"),
                List.of("t-wall", "t-frame"),
                List.of("t-bed", "t-bed-edge"),
                List.of("t-bed", "t-pillow"),
                List.of("t-step", "t-step-edge"),
                List.of("t-step", "t-step-top"))) {
            double one = colours(css.get(pair.get(0))).get("fill");
            double other = colours(css.get(pair.get(1))).get("fill");
            if (Math.abs(one - other) < STEP) {
                close.add(pair + " " + one + " " + other);
            }
        }

        assertTrue(close.isEmpty(), String.join("\n", close));
    }

    private static void compare(List<String> close, String who, Map<String, Double> tones, String a, String b) {
        if (Math.abs(tones.get(a) - tones.get(b)) < STEP) {
            close.add(who + ": " + a + " " + tones.get(a) + ", " + b + " " + tones.get(b));
        }
    }

    private static Map<String, String> css() throws IOException {
        String text = new String(
                TonesTest.class.getResourceAsStream("/static/css/figure.css").readAllBytes(), StandardCharsets.UTF_8);
        Map<String, String> rules = new HashMap<>();
        Matcher rule = RULE.matcher(text);
        while (rule.find()) {
            rules.putIfAbsent(rule.group(1), rule.group(2));
        }
        return rules;
    }

    private static Map<String, Double> colours(String rule) {
        Map<String, Double> colours = new HashMap<>();
        Matcher colour = COLOUR.matcher(rule);
        while (colour.find()) {
            colours.put(
                    colour.group(1), lightness(Integer.parseInt(colour.group(2).substring(1), 16)));
        }
        return colours;
    }

    /** CIE 1976 L* of an sRGB colour. */
    private static double lightness(int rgb) {
        double y = .2126 * linear(rgb >> 16) + .7152 * linear(rgb >> 8) + .0722 * linear(rgb);
        return y > .008856 ? 116 * Math.cbrt(y) - 16 : 903.3 * y;
    }

    private static double linear(int channel) {
        double value = (channel & 255) / 255.0;
        return value <= .04045 ? value / 12.92 : Math.pow((value + .055) / 1.055, 2.4);
    }
}
