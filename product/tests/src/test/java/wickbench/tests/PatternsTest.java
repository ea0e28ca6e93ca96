package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every message can be said: values are put in as text, so a pattern that asks for a number fails before its user. */
class PatternsTest {
    private static final Path BUNDLES = Path.of("..", "..", "bundles");
    private static final Object[] TEXTS = Collections.nCopies(10, "text").toArray();

    @TestFactory
    List<DynamicTest> take_texts() throws IOException {
        try (Stream<Path> files = Files.walk(BUNDLES)) {
            return files.filter(PatternsTest::holdsPatterns)
                    .sorted()
                    .map(file -> DynamicTest.dynamicTest(
                            BUNDLES.relativize(file).getName(0) + " " + file.getFileName(), () -> takeTexts(file)))
                    .toList();
        }
    }

    /** The words of the commands are picocli's patterns, of another kind. */
    private static boolean holdsPatterns(Path file) {
        String name = file.getFileName().toString();
        return file.toString().contains("src/main/")
                && file.getParent().endsWith("l10n")
                && name.endsWith(".properties")
                && !name.startsWith("commands");
    }

    private static void takeTexts(Path file) {
        words(file)
                .forEach((key, pattern) -> assertThatCode(
                                () -> new MessageFormat((String) pattern, Locale.ROOT).format(TEXTS))
                        .as("%s", key)
                        .doesNotThrowAnyException());
    }

    private static Properties words(Path file) {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            words.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }
}
