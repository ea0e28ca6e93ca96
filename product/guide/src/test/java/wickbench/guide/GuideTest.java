package wickbench.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages that are made of docs. */
class GuideTest {
    private static final Path DOCS = Path.of("..", "..", "docs");
    private static final Pattern POINTS = Pattern.compile("(?:href|src)=\"([^\"]+)\"");

    private static final Pattern NAMED = Pattern.compile("String guide\\(\\) \\{\\s*return \"([^\"]+)\"");

    @TempDir
    static Path out;

    @BeforeAll
    static void make() throws IOException {
        new Guide(DOCS, out).make();
    }

    @Test
    void every_source_becomes_a_page() throws IOException {
        assertThat(pages()).hasSameSizeAs(sources()).hasSizeGreaterThan(20);
    }

    @Test
    void every_link_and_picture_leads_somewhere() throws IOException {
        for (Path page : pages()) {
            String html = Files.readString(page);
            for (MatchResult found : POINTS.matcher(html).results().toList()) {
                String to = found.group(1);
                if (!to.contains("://")) {
                    assertThat(leads(page, to)).as("%s: %s", page, to).isTrue();
                }
            }
        }
    }

    @Test
    void tables_and_headings_are_what_they_were_in_the_source(@TempDir Path docs, @TempDir Path made)
            throws IOException {
        Files.writeString(
                docs.resolve("small.md"),
                "# Small & plain\n\n## Two things\n\n| a | b |\n|---|---|\n| 1 | [on](small.md#two-things) |\n");
        new Guide(docs, made).make();

        assertThat(Files.readString(made.resolve("small.html")))
                .contains(
                        "<title>Small &amp; plain – Wickbench</title>",
                        "<h2 id=\"two-things\">Two things</h2>",
                        "<td><a href=\"small.html#two-things\">on</a></td>",
                        "aria-current=\"page\">Small &amp; plain</a>");
    }

    @Test
    void what_a_page_of_the_desk_names_is_made() throws IOException {
        List<String> named = new ArrayList<>();
        for (Path source : below(Path.of("..", "..", "bundles"), "Page.java")) {
            NAMED.matcher(Files.readString(source))
                    .results()
                    .map(found -> found.group(1))
                    .forEach(named::add);
        }
        assertThat(named)
                .contains("guide.html", "bench.html", "ledger.html")
                .allMatch(page -> Files.exists(out.resolve(page)));
    }

    /** Tells whether a file of that name is there, made or beside its source, with the heading that is named. */
    private static boolean leads(Path page, String to) throws IOException {
        int mark = to.indexOf('#');
        String name = mark < 0 ? to : to.substring(0, mark);
        Path made = name.isEmpty() ? page : page.getParent().resolve(name).normalize();
        if (mark >= 0 && Files.exists(made)) {
            return Files.readString(made).contains("id=\"" + to.substring(mark + 1) + "\"");
        }
        return Files.exists(made)
                || Files.exists(DOCS.resolve(out.relativize(made)).normalize());
    }

    private static List<Path> pages() throws IOException {
        return below(out, ".html");
    }

    private static List<Path> sources() throws IOException {
        return below(DOCS, ".md");
    }

    private static List<Path> below(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
