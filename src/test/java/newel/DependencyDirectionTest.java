package newel;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DependencyDirectionTest {
    private static final JavaClasses NEWEL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("newel");

    /** What each package may use. Change it together with the page that explains the house. */
    private static final Map<String, Set<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("body", Set.of());
        MAY_USE.put("source", Set.of());
        MAY_USE.put("figure", Set.of("body"));
        MAY_USE.put("catalogue", Set.of("body"));
        MAY_USE.put("limit", Set.of("body", "catalogue"));
        MAY_USE.put("coverage", Set.of("body", "catalogue", "limit"));
        MAY_USE.put("adapt", Set.of("body", "catalogue", "limit"));
        MAY_USE.put("compose", Set.of("body", "source", "catalogue", "limit", "adapt"));
        MAY_USE.put("client", Set.of("body", "catalogue", "limit"));
        MAY_USE.put("screen", Set.of("source", "client", "catalogue", "limit"));
        MAY_USE.put("assess", Set.of("source", "client", "catalogue"));
        MAY_USE.put("referral", Set.of("body", "source", "client", "screen", "assess", "limit", "practice"));
        MAY_USE.put(
                "program",
                Set.of("body", "source", "client", "catalogue", "limit", "adapt", "compose", "screen", "assess"));
        MAY_USE.put("handout", Set.of("client", "program", "catalogue", "figure", "body", "limit", "adapt", "compose"));
        MAY_USE.put("practice", Set.of("assess", "source", "screen"));
        MAY_USE.put("casefile", core());
        MAY_USE.put("demo", with(core(), "casefile"));
        MAY_USE.put("store", with(core(), "casefile"));
        MAY_USE.put("web", with(core(), "casefile", "store", "demo"));
    }

    private static final Set<String> EDGES = Set.of("casefile", "demo", "store", "web");

    /** Catalogue, presets, norms and what composing weighs are read from YAML where they are defined. */
    private static final Set<String> READ_DATA = Set.of("catalogue", "limit", "coverage", "assess", "compose");

    private static Set<String> core() {
        return Set.of(
                "body",
                "source",
                "figure",
                "catalogue",
                "limit",
                "coverage",
                "adapt",
                "compose",
                "client",
                "screen",
                "assess",
                "referral",
                "program",
                "handout",
                "practice");
    }

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(List.of(more));
        return all;
    }

    static Stream<String> packages() {
        return MAY_USE.keySet().stream();
    }

    static Stream<String> corePackages() {
        return packages().filter(name -> !EDGES.contains(name));
    }

    @ParameterizedTest
    @MethodSource("packages")
    void a_package_uses_only_what_the_table_allows(String name) {
        Set<String> allowed = MAY_USE.get(name);
        DescribedPredicate<JavaClass> elsewhere = DescribedPredicate.describe(
                "a package of ours that " + name + " may not use",
                used -> used.getPackageName().startsWith("newel")
                        && !feature(used).equals(name)
                        && !allowed.contains(feature(used)));

        noClasses()
                .that()
                .resideInAPackage("newel." + name + "..")
                .should()
                .dependOnClassesThat(elsewhere)
                .allowEmptyShould(true)
                .check(NEWEL);
    }

    @Test
    void every_package_stands_in_the_table() {
        Set<String> found = new TreeSet<>();
        NEWEL.forEach(type -> found.add(feature(type)));
        found.removeAll(MAY_USE.keySet());

        Assertions.assertEquals(Set.of(""), found, "only the main class stands outside");
    }

    @Test
    void packages_have_no_cycles() {
        slices().matching("newel.(*)..").should().beFreeOfCycles().check(NEWEL);
    }

    @Test
    void only_the_store_speaks_sql() {
        noClasses()
                .that()
                .resideOutsideOfPackages("newel.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..")
                .check(NEWEL);
    }

    @Test
    void only_the_web_speaks_http_and_html() {
        noClasses()
                .that()
                .resideOutsideOfPackages("newel.web..", "newel")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "gg.jte..", "jakarta.servlet..", "java.net.http..")
                .check(NEWEL);
    }

    @ParameterizedTest
    @MethodSource("corePackages")
    void the_core_knows_no_clock_and_no_chance(String name) {
        classes()
                .that()
                .resideInAPackage("newel." + name + "..")
                .should()
                .onlyCallMethodsThat(DescribedPredicate.describe(
                        "read no clock and draw no chance",
                        method -> !(method.getName().equals("now")
                                        && method.getOwner().getPackageName().startsWith("java.time"))
                                && !method.getFullName().startsWith("java.lang.System.currentTimeMillis")
                                && !method.getFullName().startsWith("java.lang.System.nanoTime")
                                && !method.getFullName().startsWith("java.lang.Math.random")
                                && !method.getFullName().startsWith("java.util.UUID.randomUUID")))
                .andShould()
                .onlyDependOnClassesThat(DescribedPredicate.describe(
                        "are no clock and no source of chance",
                        used -> !Set.of(
                                        "java.time.Clock",
                                        "java.util.Random",
                                        "java.util.SplittableRandom",
                                        "java.util.concurrent.ThreadLocalRandom",
                                        "java.security.SecureRandom")
                                .contains(used.getName())))
                .allowEmptyShould(true)
                .check(NEWEL);
    }

    @ParameterizedTest
    @MethodSource("corePackages")
    void the_core_reads_no_json(String name) {
        if (READ_DATA.contains(name)) {
            return;
        }
        noClasses()
                .that()
                .resideInAPackage("newel." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml.jackson..", "com.networknt..")
                .allowEmptyShould(true)
                .check(NEWEL);
    }

    private static String feature(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length < 2 ? "" : parts[1];
    }
}
