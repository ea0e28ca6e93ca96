package wickbench.figures.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every word that the pages ask for is there, and no other. A literal that ends in a point begins a key. */
class WordsTest {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern ASKED = Pattern.compile("UiWords\\s*\\.get\\(\\s*\"([^\"]+)\"");

    @Test
    void no_word_is_missing() {
        Set<String> keys = keys();

        assertThat(literals(ASKED))
                .isNotEmpty()
                .allMatch(asked -> asked.endsWith(".")
                        ? keys.stream().anyMatch(key -> key.startsWith(asked))
                        : keys.contains(asked));
    }

    @Test
    void no_word_is_left_over() {
        List<String> literals = literals(LITERAL);

        assertThat(keys())
                .isNotEmpty()
                .allMatch(key -> literals.stream()
                        .anyMatch(text -> text.equals(key)
                                || key.startsWith(text) && text.endsWith(".")
                                || key.endsWith(text) && text.startsWith(".")));
    }

    private static Set<String> keys() {
        Properties words = new Properties();
        try (Reader file = Files.newBufferedReader(Path.of("src/main/resources/OSGI-INF/l10n/figures-ui.properties"))) {
            words.load(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words.stringPropertyNames();
    }

    private static List<String> literals(Pattern pattern) {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(Files::isRegularFile)
                    .map(WordsTest::read)
                    .flatMap(source -> pattern.matcher(source).results())
                    .map((MatchResult match) -> match.group(1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
