package newel.store;

import java.util.Collections;
import java.util.List;
import newel.catalogue.Catalogue;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Finds variants by what is said of them. */
public final class SearchStore {
    private static final int COLUMNS = 9;

    private final Jdbi jdbi;

    SearchStore(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** Takes in what the catalogue says, unless it is there already. */
    public void fill(Catalogue catalogue) {
        List<SearchText> texts = SearchText.of(catalogue);
        String fingerprint = SearchText.fingerprint(texts);
        jdbi.useTransaction(handle -> {
            if (!filledFrom(handle, fingerprint)) {
                handle.execute("delete from search");
                handle.execute("delete from search_source");
                insert(handle, texts);
                handle.execute("insert into search_source (fingerprint) values (?)", fingerprint);
            }
        });
    }

    /**
     * Ids of the variants that hold every word, or a word that begins so, the best first. A movement's name counts most,
     * then a variant's, then goals and what it is good for (weights: design choice). Text without a word finds nothing.
     */
    public List<String> find(String typed) {
        SearchWords words = SearchWords.of(typed);
        if (words.none()) {
            return List.of();
        }
        return jdbi.withHandle(handle -> handle.createQuery("""
                        select variant from search
                        where search match :words
                        order by bm25(search, 0, 0, 12, 8, 3, 3, 1, 2, 2), rowid""")
                .bind("words", words.match())
                .mapTo(String.class)
                .list());
    }

    /** Whether there is anything in the text that can be looked for. */
    public static boolean holdsWords(String typed) {
        return !SearchWords.of(typed).none();
    }

    private static boolean filledFrom(Handle handle, String fingerprint) {
        return handle.createQuery("select count(*) from search_source where fingerprint = :fingerprint")
                        .bind("fingerprint", fingerprint)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private static void insert(Handle handle, List<SearchText> texts) {
        String marks = String.join(", ", Collections.nCopies(COLUMNS, "?"));
        PreparedBatch batch = handle.prepareBatch("insert into search values (" + marks + ")");
        for (SearchText text : texts) {
            batch.add(
                    text.movement(),
                    text.variant(),
                    text.movementName(),
                    text.variantName(),
                    text.why(),
                    text.goals(),
                    text.setUp(),
                    text.steps(),
                    text.feel());
        }
        batch.execute();
    }
}
