package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read stands in message files, where it can be said in another language. */
class HardWordsTest {
    private static final Path BUNDLES = Path.of("../../bundles");

    /** Where windows and the command line are made. */
    private static final Pattern SPOKEN =
            Pattern.compile("wickbench\\.(.*\\.ui|shell|widgets|console|figures\\.commands)");

    /** What asks the index does so in its language, which has words of its own. */
    private static final String ASKS = "implements IndexView";

    /** Never on the product: what tests share. */
    private static final Pattern OUTSIDE = Pattern.compile("lib\\..*|wickbench\\.testing.*");

    /** Fewer would mean that the test looks at the wrong place. */
    private static final int AT_LEAST_SOURCES = 1000;

    /** What looks like words and is none, each with its reason. */
    private static final Map<String, String> NO_WORDS = Map.of(
            "\"Wickbench\"", "a name",
            "\"station-1\"", "an example of an id",
            "\"Library/Application Support\"", "a folder of the system",
            "\"desktop usable\"", "a phase of the start, for who traces it");

    @Test
    void no_word_for_people_stands_in_a_source() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        int seen = 0;
        for (Path source : sources()) {
            seen++;
            String text = Files.readString(source);
            List<String> words = HardWords.in(text, isSpoken(source) && !text.contains(ASKS)).stream()
                    .filter(each -> !NO_WORDS.containsKey(each.replaceFirst("\\d+: ", "")))
                    .toList();
            if (!words.isEmpty()) {
                found.put(BUNDLES.relativize(source).toString(), words);
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(AT_LEAST_SOURCES);
        assertThat(found).isEmpty();
    }

    @Test
    void planted_words_are_found_and_nothing_else() {
        String planted = planted();
        assertThat(lines(HardWords.in(planted, false))).isEqualTo(marked(planted, "// found$"));
        assertThat(lines(HardWords.in(planted, true))).isEqualTo(marked(planted, "// found( in a window)?$"));
    }

    /** An entry keeps what a gate or a rule gives as its reason, and the same act must give the same bytes in every language. */
    @Test
    void no_word_of_a_language_gets_into_an_entry_as_a_reason() throws IOException {
        Pattern spoken = Pattern.compile(
                "(new (Answer\\.)?(Reason|Finding)|Rule\\.(voids|bars|caution))\\s*\\([^;]*?Words(\\(\\))?\\.get\\(");
        assertThat(spoken.matcher("List.of(new Answer.Reason(\"a.b\", it.toString(), SomeWords.get(\"asked\")))")
                        .find())
                .isTrue();
        for (Path source : sources()) {
            assertThat(spoken.matcher(Files.readString(source)).find())
                    .as("%s", source)
                    .isFalse();
        }
    }

    private static List<Integer> lines(List<String> found) {
        return found.stream()
                .map(each -> Integer.valueOf(each.substring(0, each.indexOf(':'))))
                .toList();
    }

    private static List<Integer> marked(String source, String mark) {
        List<String> lines = source.lines().toList();
        List<Integer> marked = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (Pattern.compile(mark).matcher(lines.get(i)).find()) {
                marked.add(i + 1);
            }
        }
        return marked;
    }

    private static String planted() {
        try (var text = HardWordsTest.class.getResourceAsStream("/planted/Planted.java.txt")) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static boolean isSpoken(Path source) {
        return SPOKEN.matcher(BUNDLES.relativize(source).getName(0).toString()).matches();
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        try (Stream<Path> bundles = Files.list(BUNDLES)) {
            for (Path bundle : bundles.sorted().toList()) {
                Path main = bundle.resolve("src/main/java");
                if (!OUTSIDE.matcher(bundle.getFileName().toString()).matches() && Files.isDirectory(main)) {
                    try (Stream<Path> all = Files.walk(main)) {
                        all.filter(file -> file.toString().endsWith(".java"))
                                .sorted()
                                .forEach(sources::add);
                    }
                }
            }
        }
        return sources;
    }
}
