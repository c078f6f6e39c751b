package newel.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import newel.client.Client;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A server of its own for each test, and one browser for all. */
public abstract class InChromium {
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-dev-shm-usage");

    protected static Browser chromium;
    private static Playwright playwright;

    @TempDir
    protected Path folder;

    protected Running running;
    protected BrowserContext context;

    @BeforeAll
    static void launch() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium-headless-shell"))
                        .setArgs(ARGUMENTS));
    }

    @AfterAll
    static void close() {
        chromium.close();
        playwright.close();
    }

    @BeforeEach
    protected void start() {
        running = new Running(folder);
    }

    @AfterEach
    void stop() {
        if (context != null) {
            context.close();
        }
        running.close();
    }

    protected Page page(boolean scripts, int width) {
        context = chromium.newContext(
                new Browser.NewContextOptions().setJavaScriptEnabled(scripts).setViewportSize(width, 900));
        context.setDefaultTimeout(8000);
        return context.newPage();
    }

    protected static void check(Page page, String label) {
        page.locator(
                        "label.option",
                        new Page.LocatorOptions()
                                .setHas(page.getByText(label, new Page.GetByTextOptions().setExact(true))))
                .first()
                .click();
    }

    protected static void press(Page page, String button) {
        page.locator("button", new Page.LocatorOptions().setHasText(button))
                .first()
                .click();
    }

    /** Somebody of the cast with a first program. */
    protected String add(Client person) {
        return Cast.addWithProgram(running.stores, person).value();
    }

    private static final int WIDE = 1000;
    /** Thousands of shapes of which nothing but their picture's name and words is heard. */
    private static final String NO_SHAPES =
            "document.querySelectorAll('svg').forEach(each => each.replaceChildren(...each.querySelectorAll('title, desc, text')))";

    private static final List<String> AA = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    /** What depends on how wide a page is; the rest is looked at once, on the wide one. */
    private static final List<String> OF_LAYOUT = List.of("target-size", "scrollable-region-focusable");

    /** Every page by the rules of WCAG 2.2 AA that a program can check, with all that can be opened open. */
    protected void passesAxeAndScrollsOnlyDownward(int width, List<String> paths) {
        Page page = page(true, width);
        List<String> found = new ArrayList<>();
        for (String path : paths) {
            page.navigate(running.address() + path);
            page.locator("details").evaluateAll("all => all.forEach(each => each.open = true)");
            page.evaluate(NO_SHAPES);
            assertEquals(1, page.locator("h1").count(), path);
            axe(page, width)
                    .analyze()
                    .getViolations()
                    .forEach(rule -> found.add("%s: %s at %s"
                            .formatted(
                                    path,
                                    rule.getId(),
                                    rule.getNodes().getFirst().getHtml())));
            Object wide = page.evaluate("document.scrollingElement.scrollWidth - window.innerWidth");
            if (((Number) wide).intValue() > 0) {
                found.add("%s: %s px too wide".formatted(path, wide));
            }
        }
        assertEquals(List.of(), found);
    }

    private static AxeBuilder axe(Page page, int width) {
        AxeBuilder axe = new AxeBuilder(page);
        return width < WIDE ? axe.withRules(OF_LAYOUT) : axe.withTags(AA);
    }
}
