package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of faults says what the messages say and what the tests show. */
class FaultTableTest {
    private static final Path ROOT = Path.of("../..");
    private static final Pattern QUOTED = Pattern.compile("“([^”]*)”");
    private static final Pattern SHOWN = Pattern.compile("`(\\w+)\\.(\\w+)`");
    private static final String ANYTHING = "…";

    private static List<String[]> rows;

    @BeforeAll
    static void read() throws IOException {
        rows = Files.readAllLines(ROOT.resolve("docs/faults.md")).stream()
                .filter(line -> line.startsWith("| F"))
                .map(line -> line.split(" *\\| *"))
                .toList();
    }

    @Test
    void everyFaultThatThePageTellsOfHasALineInOrder() {
        assertThat(rows).allMatch(row -> row.length == 6);
        assertThat(rows.stream().map(row -> row[1]))
                .containsExactlyElementsOf(Stream.concat(
                                IntStream.rangeClosed(1, 20).mapToObj("F%02d"::formatted),
                                Stream.of(
                                        "F24", "F26", "F27", "F29", "F30", "F38", "F39", "F40", "F41", "F42", "F43",
                                        "F44"))
                        .toList());
    }

    @Test
    void theWordsAreThoseOfTheMessages() throws IOException {
        List<String> messages = messages();
        for (String[] row : rows) {
            for (String said : all(QUOTED, row[4], 1)) {
                assertThat(messages).as("%s: %s", row[1], said).anyMatch(message -> message.contains(said));
            }
        }
    }

    @Test
    void everyFaultIsShownByTestsThatAreThere() throws IOException {
        for (String[] row : rows) {
            Matcher shown = SHOWN.matcher(row[5]);
            assertThat(shown.results()).as(row[1]).isNotEmpty();
            shown.reset();
            while (shown.find()) {
                String method = "void " + shown.group(2) + "(";
                assertThat(sources(shown.group(1)))
                        .as("%s: %s.%s", row[1], shown.group(1), shown.group(2))
                        .anyMatch(source -> source.contains(method));
            }
        }
    }

    private static List<String> all(Pattern pattern, String text, int group) {
        return pattern.matcher(text).results().map(found -> found.group(group)).toList();
    }

    /** Returns every message of the house as people see it, with a mark where values stand. */
    private static List<String> messages() throws IOException {
        List<String> messages = new ArrayList<>();
        for (Path file : files("src/main/resources/OSGI-INF/l10n", ".properties")) {
            Properties words = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                words.load(reader);
            }
            words.values()
                    .forEach(value -> messages.add(value.toString()
                            .replaceAll("\\{\\d+[^}]*}", ANYTHING)
                            .replace("''", "'")));
        }
        return messages;
    }

    private static List<String> sources(String test) throws IOException {
        List<String> sources = new ArrayList<>();
        for (Path file : files("src/test/java", "/" + test + ".java")) {
            sources.add(Files.readString(file));
        }
        return sources;
    }

    private static List<Path> files(String below, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(ROOT.resolve("bundles"))) {
            return all.filter(path ->
                            path.toString().contains(below) && path.toString().endsWith(ending))
                    .collect(Collectors.toList());
        }
    }
}
