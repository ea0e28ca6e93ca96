package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every picture of the guide is there and is painted by {@code product/pictures}, and none is left over. */
class GuidePicturesTest {
    private static final Path DOCS = Path.of("../../docs");
    private static final Path PAINTS = Path.of("../pictures");
    private static final Pattern SHOWN = Pattern.compile("]\\((?:\\.\\./)*pictures/([^)]+)\\.png\\)");

    /** Painted in both looks, or in one language and look. */
    private static final Pattern BOTH = Pattern.compile("^name=(\\S+) picture ", Pattern.MULTILINE);

    private static final Pattern ONE = Pattern.compile("^paint \\S+ \\S+ (\\S+) ", Pattern.MULTILINE);

    @Test
    void every_picture_that_a_page_shows_is_there() throws IOException {
        assertThat(shown()).hasSizeGreaterThan(20).isSubsetOf(there());
    }

    @Test
    void the_build_paints_every_picture_and_no_other() throws IOException {
        assertThat(there()).isEqualTo(painted());
    }

    private static Set<String> painted() throws IOException {
        String list = Files.readString(PAINTS);
        return Stream.concat(
                        found(BOTH, list).flatMap(name -> Stream.of(name + "-light", name + "-dark")), found(ONE, list))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> shown() throws IOException {
        Set<String> shown = new TreeSet<>();
        try (Stream<Path> files = Files.walk(DOCS)) {
            for (Path page : files.filter(file -> file.toString().endsWith(".md")).toList()) {
                found(SHOWN, Files.readString(page)).forEach(shown::add);
            }
        }
        return shown;
    }

    private static Set<String> there() throws IOException {
        try (Stream<Path> files = Files.list(DOCS.resolve("pictures"))) {
            return files.map(file -> file.getFileName().toString().replaceFirst("\\.png$", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static Stream<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map((MatchResult each) -> each.group(1));
    }
}
