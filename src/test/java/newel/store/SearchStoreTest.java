package newel.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import newel.Shipped;
import newel.catalogue.Catalogue;
import newel.catalogue.Movement;
import newel.catalogue.Variant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SearchStoreTest {
    @TempDir
    Path folder;

    private Database database;
    private SearchStore search;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("newel.db"));
        search = Stores.of(database, Clock.systemUTC()).search();
        search.fill(Shipped.CATALOGUE);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void a_movement_is_found_first_by_its_name() {
        assertEquals("towel-row", movement(search.find("towel row").getFirst()));
        assertEquals("heel-raise", movement(search.find("heel raise").getFirst()));
    }

    @Test
    void every_variant_is_found_by_its_own_name() {
        for (Variant variant : Shipped.CATALOGUE.variants()) {
            assertTrue(search.find(variant.name()).contains(variant.id()), variant.id());
        }
    }

    @Test
    void it_is_found_by_what_it_is_good_for_its_set_up_its_steps_how_it_feels_and_its_goals() {
        assertTrue(search.find("heavy doors").contains("towel-row-seated-back"), "why");
        assertTrue(search.find("pull the ends apart").contains("towel-row-seated-back"), "set-up");
        assertTrue(search.find("elbows back beside the chair").contains("towel-row-seated-back"), "steps");
        assertTrue(search.find("between your shoulder blades").contains("towel-row-seated-back"), "feel");
        assertTrue(search.find("sit taller").contains("towel-row-seated-back"), "goal");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rowing towels", "ROW TOWEL", "row tow", "  row,towel  ", "röw tówel", "row-towel"})
    void endings_case_beginnings_order_and_accents_do_not_matter(String typed) {
        assertEquals("towel-row", movement(search.find(typed).getFirst()));
    }

    @Test
    void every_word_must_be_there() {
        assertTrue(search.find("towel").size() > 0);
        assertEquals(List.of(), search.find("towel xylophone"));
    }

    /** Each would be an error, or another question, if it were read as the language of the search. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "towel\"",
                "\"towel row\"",
                "towel AND",
                "NOT towel",
                "towel OR",
                "towel NEAR(row)",
                "towel*",
                "*",
                "^towel",
                "movement_name:towel",
                "{why}:towel",
                "towel + row",
                "(towel",
                "towel)",
                "'; drop table search; --",
                "-towel",
                "\u0000towel",
                "towel\\",
                "\"\"",
                "\"*\"",
                "NEAR(",
                "-",
                "%",
                "_",
                "\uD83D\uDE00",
                "\uD83D towel",
                "%s",
                ":words",
                "?"
            })
    void nothing_typed_is_read_as_the_language_of_the_search(String typed) {
        search.find(typed);

        assertEquals("towel-row", movement(search.find("towel row").getFirst()), "the rows are still there");
    }

    @Test
    void signs_around_a_word_are_as_if_they_were_not_there() {
        List<String> plain = search.find("towel");

        for (String typed : List.of("towel\"", "(towel", "-towel", "^towel", "towel*", "'towel'", "\u0000towel")) {
            assertEquals(plain, search.find(typed), typed);
        }
    }

    @Test
    void words_of_the_language_of_the_search_are_words_like_others() {
        List<String> both = search.find("towel not");

        assertEquals(both, search.find("towel NOT"));
        assertEquals(both, search.find("NOT towel"));
        assertTrue(search.find("towel").containsAll(both));
        assertTrue(both.size() < search.find("towel").size());
    }

    @Test
    void text_without_a_word_finds_nothing_and_is_told_apart() {
        for (String typed : List.of("", "   ", "\"*()", "\uD83D\uDE00", "--")) {
            assertEquals(List.of(), search.find(typed), typed);
            assertEquals(false, SearchStore.holdsWords(typed), typed);
        }
        assertTrue(SearchStore.holdsWords("(towel"));
    }

    @Test
    void very_long_text_is_cut_and_answered() {
        assertEquals(List.of(), search.find("towel ".repeat(5) + "x".repeat(100_000)));
        assertTrue(search.find("towel ".repeat(50_000)).size() > 0);
    }

    @Test
    void random_signs_are_always_answered() {
        long seed = 20260303;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 400; round++) {
            String typed = random.ints(random.nextInt(1, 30), 0, 0x2FFF)
                    .mapToObj(Character::toString)
                    .collect(Collectors.joining());
            assertTrue(search.find(typed).size() <= Shipped.CATALOGUE.variants().size(), "seed " + seed + ": " + typed);
        }
    }

    @Test
    void filling_again_from_the_same_catalogue_changes_no_row() {
        database.jdbi()
                .useHandle(handle -> handle.execute("delete from search where variant = 'towel-row-seated-back'"));

        search.fill(Shipped.CATALOGUE);

        assertEquals(Shipped.CATALOGUE.variants().size() - 1, rows());
    }

    @Test
    void a_changed_catalogue_is_taken_in_whole() {
        Movement row = Shipped.CATALOGUE.movement("towel-row").orElseThrow();

        search.fill(new Catalogue(List.of(row)));

        assertEquals(row.variants().size(), rows());
        assertEquals(List.of(), search.find("heel raise"));
    }

    private int rows() {
        return database.jdbi()
                .withHandle(handle -> handle.createQuery("select count(*) from search")
                        .mapTo(Integer.class)
                        .one());
    }

    private static String movement(String variant) {
        return Shipped.variant(variant).movement();
    }
}
