package newel.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lists that plain words are held to, an entry a line; a line that begins with # is about the list. */
final class WordList {
    static List<String> read(String name) {
        try (InputStream list = WordList.class.getResourceAsStream("/newel/catalogue/words/" + name)) {
            return new String(list.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private WordList() {}
}
