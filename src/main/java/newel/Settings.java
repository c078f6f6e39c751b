package newel;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How to serve, as said on the command line. */
record Settings(int port, Path data, boolean demo, List<String> faults) {
    static final int USUAL_PORT = 8080;
    private static final int HIGHEST_PORT = 65_535;

    /** Takes {@code --port 8080} and {@code --port=8080} alike; what it does not know becomes a fault. */
    static Settings read(List<String> arguments) {
        Settings settings =
                new Settings(USUAL_PORT, Path.of(System.getProperty("user.home"), "newel-data"), false, List.of());
        List<String> words = split(arguments);
        for (int at = 0; at < words.size(); at++) {
            settings = switch (words.get(at)) {
                case "--demo" -> settings.withDemo();
                case "--port" -> settings.withPort(++at < words.size() ? words.get(at) : "");
                case "--data" -> settings.withData(++at < words.size() ? words.get(at) : "");
                default -> settings.withFault("unknown argument: " + words.get(at));
            };
        }
        return settings;
    }

    private static List<String> split(List<String> arguments) {
        List<String> words = new ArrayList<>();
        arguments.forEach(argument -> words.addAll(List.of(argument.split("=", 2))));
        return words;
    }

    URI address() {
        return URI.create("http://127.0.0.1:" + port);
    }

    private Settings withDemo() {
        return new Settings(port, data, true, faults);
    }

    private Settings withPort(String text) {
        boolean good = text.matches("\\d{1,5}") && Integer.parseInt(text) <= HIGHEST_PORT;
        return good
                ? new Settings(Integer.parseInt(text), data, demo, faults)
                : withFault("--port needs a number from 0 to " + HIGHEST_PORT + ", not \"" + text + "\"");
    }

    private Settings withData(String text) {
        return text.isBlank() ? withFault("--data needs a folder") : new Settings(port, Path.of(text), demo, faults);
    }

    private Settings withFault(String fault) {
        List<String> more = new ArrayList<>(faults);
        more.add(fault);
        return new Settings(port, data, demo, List.copyOf(more));
    }
}
