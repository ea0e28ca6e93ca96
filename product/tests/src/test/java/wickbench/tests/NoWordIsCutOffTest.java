package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No word is cut off on any page of which the guide has a picture, in the longer of the two languages and with large letters.
 *
 * <p>What each control needs is held against what it got; a picture shows what no control knows of, such as drawings.
 */
class NoWordIsCutOffTest {
    /** The list by which the pictures of the guide are painted. */
    private static final Path PICTURES = Path.of("../pictures");

    private static final Pattern PICTURE = Pattern.compile("^name=\\S+ picture (.+)$", Pattern.MULTILINE);
    private static final int AT_LEAST_PAGES = 24;

    /** Tables of figures that are wider than the side where their answer stands; one scrolls to the last column. */
    private static final List<String> SCROLLED = List.of(
            "[figures, --select, detection] cortado: Límite superior",
            "[figures, --select, trend] cortado: Límite superior");

    /** Begins each line that tells of words cut off. */
    private static final String CUT = "cortado: ";

    /** Of a run under way, which this home has not. */
    private static final List<String> RUN = List.of("plan", "clock", "strip:5", "strip:4", "next");

    @TempDir
    Path temporary;

    @Test
    void in_spanish_at_150_per_cent() throws Exception {
        List<String> cut = new ArrayList<>();
        try (StartedProgram program = StartedProgram.of(List.of("complete"), temporary)) {
            DemoHome home = DemoHome.found(program, temporary.resolve("home"));
            List<List<String>> pages = pages();
            assertThat(pages).hasSizeGreaterThanOrEqualTo(AT_LEAST_PAGES);
            for (List<String> page : pages) {
                Answer answer = look(home, page);
                answer.err().lines().filter(line -> line.startsWith(CUT)).forEach(line -> cut.add(page + " " + line));
                assertThat(answer.code()).as("%s: %s", page, answer.err()).isLessThanOrEqualTo(1);
            }
        }
        assertThat(cut).isSubsetOf(SCROLLED);
    }

    private Answer look(DemoHome home, List<String> page) throws Exception {
        List<String> line = new ArrayList<>(List.of(
                "--home",
                home.folder().toString(),
                "--as",
                "op-05",
                "--language",
                "es",
                "picture",
                "--whole",
                "--page"));
        line.addAll(page);
        line.addAll(List.of("--size", "1280x800", "--theme", "dark", "--zoom", "150", "--out"));
        line.add(temporary.resolve("page.png").toString());
        return home.program().call(line.toArray(String[]::new));
    }

    private static List<List<String>> pages() throws IOException {
        return PICTURE.matcher(Files.readString(PICTURES))
                .results()
                .map((MatchResult found) -> found.group(1)
                        .replace("\"$PWD", BuiltProduct.folder().toString())
                        .replace("\"", ""))
                .map(arguments -> List.of(arguments.split(" +")))
                .filter(arguments -> RUN.stream().noneMatch(arguments::contains))
                .toList();
    }
}
