package wickbench.testing;

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

/**
 * The message files of a bundle held against its sources; the bundle is the one whose tests run.
 *
 * <p>A literal that ends in a point begins a key, one that begins with a point ends one.
 */
public final class WordsCheck {
    /** A quotation mark as a character begins no text. */
    private static final Pattern LITERAL = Pattern.compile("'\\\\?\"'|\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static final Pattern ASKED = Pattern.compile("[wW]ords(?:\\(\\))?\\s*\\.get\\(\\s*\"([^\"]+)\"");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?:'')*(?!')");

    private final Properties words = new Properties();

    /** Reads message files {@code OSGI-INF/l10n/NAME.properties}, together all that the bundle has. */
    public WordsCheck(String... names) {
        for (String name : names) {
            load(name);
        }
    }

    private void load(String name) {
        try (Reader file = Files.newBufferedReader(Path.of("src/main/resources/OSGI-INF/l10n", name + ".properties"))) {
            words.load(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Fails unless every word that a source asks for is there. */
    public void noneIsMissing() {
        Set<String> keys = words.stringPropertyNames();
        assertThat(literals(ASKED))
                .isNotEmpty()
                .allMatch(asked -> asked.endsWith(".")
                        ? keys.stream().anyMatch(key -> key.startsWith(asked))
                        : keys.contains(asked));
    }

    /** Fails unless a source names every word, whole or by its beginning or end. */
    public void noneIsLeftOver() {
        List<String> literals = literals(LITERAL);
        assertThat(words.stringPropertyNames())
                .isNotEmpty()
                .allMatch(key -> literals.stream()
                        .anyMatch(text -> text.equals(key)
                                || key.startsWith(text) && text.endsWith(".")
                                || key.endsWith(text) && text.startsWith(".")));
    }

    /** Fails when an apostrophe stands alone, for a pattern would swallow it. */
    public void apostrophesAreDoubled() {
        assertThat(words.stringPropertyNames())
                .isNotEmpty()
                .noneMatch(
                        key -> LONE_APOSTROPHE.matcher(words.getProperty(key)).find());
    }

    private static List<String> literals(Pattern pattern) {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(Files::isRegularFile)
                    .map(WordsCheck::read)
                    .flatMap(source -> pattern.matcher(source).results())
                    .flatMap((MatchResult match) -> Stream.ofNullable(match.group(1)))
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
