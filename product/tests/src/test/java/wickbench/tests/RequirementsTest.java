package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of requirements names, clause by clause, the tests that say by {@code @Meets} that they show it. */
class RequirementsTest {
    private static final Path ROOT = Path.of("../..");
    private static final Path PAGE = ROOT.resolve("docs/requirements.md");
    private static final Path ANEW = Path.of("target/requirements.md");
    private static final Pattern MARKED =
            Pattern.compile("@Meets\\(((?:[^\"]|\"[^\"]*\")*?)\\)\\R(?:.*\\R)*? +void (\\w+)\\(");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");
    private static final Pattern ROW =
            Pattern.compile("\\| ((?:21 CFR|EU GMP|ALCOA\\+|ISO)[^|]*) \\| ([^|]*) \\| ([^|]*) \\|([^|]*)\\|");
    private static final String OWN_DUTY = "**The site’s own duty**";

    private static List<String> page;
    private static Map<String, TreeSet<String>> shown;

    @BeforeAll
    static void read() throws IOException {
        page = Files.readAllLines(PAGE);
        shown = new TreeMap<>();
        for (Path file : tests()) {
            String test = file.getFileName().toString().replace(".java", "");
            MARKED.matcher(Files.readString(file))
                    .results()
                    .forEach(mark -> clauses(mark.group(1))
                            .forEach(clause -> shown.computeIfAbsent(clause, none -> new TreeSet<>())
                                    .add("`" + test + "." + mark.group(2) + "`")));
        }
    }

    /** Where it fails, {@code product/tests/target/requirements.md} is the page as the tests would have it. */
    @Test
    void theLastColumnIsWhatTheTestsSay() throws IOException {
        List<String> anew = page.stream().map(RequirementsTest::asShown).toList();
        Files.write(ANEW, anew);
        assertThat(page).containsExactlyElementsOf(anew);
    }

    @Test
    void everyClauseThatATestNamesIsOnThePage() {
        assertThat(rows().map(row -> row.group(1))).doesNotHaveDuplicates().containsAll(shown.keySet());
    }

    @Test
    void everyClauseIsShownByATestOrCalledTheSitesOwnDuty() {
        assertThat(rows())
                .hasSizeGreaterThan(80)
                .allSatisfy(row -> assertThat(row.group(3).startsWith(OWN_DUTY) || shown.containsKey(row.group(1)))
                        .as(row.group(1))
                        .isTrue());
    }

    @Test
    void everyMarkIsRead() throws IOException {
        long marks = 0;
        for (Path file : tests()) {
            marks += Files.readString(file)
                    .lines()
                    .filter(line -> line.strip().startsWith("@Meets("))
                    .count();
        }
        List<String> read = new ArrayList<>();
        for (Path file : tests()) {
            MARKED.matcher(Files.readString(file)).results().forEach(mark -> read.add(mark.group(2)));
        }
        assertThat(read).hasSize((int) marks);
    }

    private static String asShown(String line) {
        return match(line)
                .map(row -> "| %s | %s | %s | %s |"
                        .formatted(
                                row.group(1),
                                row.group(2),
                                row.group(3),
                                String.join(", ", shown.getOrDefault(row.group(1), new TreeSet<>()))))
                .findFirst()
                .orElse(line);
    }

    private static Stream<MatchResult> rows() {
        return page.stream().flatMap(RequirementsTest::match);
    }

    private static Stream<MatchResult> match(String line) {
        return ROW.matcher(line).results();
    }

    private static List<String> clauses(String quoted) {
        return QUOTED.matcher(quoted).results().map(found -> found.group(1)).toList();
    }

    private static List<Path> tests() throws IOException {
        try (Stream<Path> all = Files.walk(ROOT.resolve("bundles"))) {
            return all.filter(path -> path.toString().contains("src/test/java")
                            && path.toString().endsWith("Test.java"))
                    .collect(Collectors.toList());
        }
    }
}
