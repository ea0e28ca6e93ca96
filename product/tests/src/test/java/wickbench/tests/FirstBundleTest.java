package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide to a first bundle is true: what it quotes stands in the example, and what it types works. */
class FirstBundleTest {
    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    private static final Path GUIDE = ROOT.resolve("docs/contribute-a-bundle.md");
    private static final Path EXAMPLE = ROOT.resolve("product/examples/wickbench.tally");
    private static final Pattern QUOTED =
            Pattern.compile("`(product/examples/[^`]+)`\n\n```[a-z]+\n(.*?)\n```", Pattern.DOTALL);
    private static final String TYPED = "wickbench ";

    private final Locale before = Locale.getDefault();

    @TempDir
    Path temporary;

    @AfterEach
    void giveBack() {
        Locale.setDefault(before);
    }

    @Test
    void what_the_guides_quote_stands_in_the_example() throws IOException {
        Map<Path, String> quoted = new TreeMap<>();
        for (String guide : List.of("contribute-a-bundle.md", "contribute-a-page.md")) {
            QUOTED.matcher(Files.readString(GUIDE.resolveSibling(guide)))
                    .results()
                    .forEach(block -> {
                        quoted.put(ROOT.resolve(block.group(1)), block.group(2));
                        assertThat(ROOT.resolve(block.group(1))).content().contains(block.group(2));
                    });
        }
        assertThat(quoted.keySet())
                .contains(EXAMPLE.resolve("pom.xml"), EXAMPLE.resolve("feature.json"))
                .containsAll(sources());
    }

    @Test
    void what_the_guide_types_works() throws Exception {
        PinnedProduct product = PinnedProduct.lay(temporary);
        Locale.setDefault(Locale.ENGLISH);
        try (StartedProgram program =
                new StartedProgram(StartedSet.of(product.folder(), List.of("base", "spanish"), temporary))) {
            enrol(program);
            Map<String, Answer> answers = new TreeMap<>();
            for (String line : typed()) {
                // a program of its own: only one framework of this one may load windows
                Answer answer = line.contains(" picture ")
                        ? new Program(product.folder(), temporary).call(arguments(line))
                        : program.call(arguments(line));
                assertThat(answer.code()).as("%s: %s", line, answer.err()).isZero();
                answers.put(
                        line.replaceFirst("^wickbench( --home [^ ]+)?( --as [^ ]+)?", "")
                                .strip(),
                        answer);
            }
            assertThat(answers.get("tally").out())
                    .containsPattern("part\\.added +1")
                    .contains("Kind");
            assertThat(answers.get("--language es tally").out()).contains("Clase");
            assertThat(answers.get("feature list").out()).contains("pages tally; commands tally; views 1");
            assertThat(ImageIO.read(temporary.resolve("target/tally.png").toFile())
                            .getWidth())
                    .isGreaterThan(1000);
            assertThat(program.call("--home", home(), "tally").code())
                    .as("it was removed")
                    .isNotZero();
        }
    }

    /** As with the window open: nothing is started again. */
    @Test
    void the_example_comes_into_a_running_program() throws Exception {
        PinnedProduct product = PinnedProduct.lay(temporary);
        try (StartedSet set = StartedSet.of(product.folder(), List.of("base"), temporary)) {
            StartedProgram program = new StartedProgram(set);
            enrol(program);
            set.nameHome(Path.of(home()));
            for (String line : typed().stream()
                    .filter(line -> line.contains(" feature "))
                    .limit(3)
                    .toList()) {
                assertThat(program.within(arguments(line)).code()).as(line).isZero();
            }
            assertThat(PagesComeAndGoTest.ids(set.host().context())).contains("tally");
            assertThat(program.within("--home", home(), "tally").out()).contains("person.enrolled");
            assertThat(set.notRunning()).isEmpty();
        }
    }

    /** What stands in the guide for whoever makes a bundle of their own. */
    @Test
    void a_copy_of_the_example_bears_its_own_name_throughout() throws Exception {
        for (Path file : files(ROOT.resolve("product/examples"))
                .filter(file -> !file.toString().contains("/target/"))
                .toList()) {
            Path copy = temporary.resolve(ROOT.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
        Files.copy(ROOT.resolve("pom.xml"), temporary.resolve("pom.xml"));
        Process copying = new ProcessBuilder("sh", "product/examples/copy", "notes")
                .directory(temporary.toFile())
                .inheritIO()
                .start();
        assertThat(copying.waitFor()).isZero();
        assertThat(temporary.resolve("pom.xml")).content().contains("<module>product/examples/wickbench.notes</module>");
        List<Path> copied = files(temporary.resolve("product/examples/wickbench.notes")).toList();
        assertThat(copied)
                .hasSameSizeAs(
                        files(temporary.resolve("product/examples/wickbench.tally")).toList());
        assertThat(copied).allSatisfy(file -> {
            assertThat(temporary.relativize(file).toString()).doesNotContainIgnoringCase("tally");
            assertThat(file).content().doesNotContainIgnoringCase("tally").doesNotContain("Tall&");
        });
    }

    private void enrol(StartedProgram program) throws ReflectiveOperationException {
        assertThat(program.call(
                                "--home",
                                home(),
                                "--as",
                                "office-01",
                                "people",
                                "add",
                                "office-01",
                                "--name",
                                "Ada",
                                "--role",
                                "administrator")
                        .code())
                .isZero();
    }

    private static List<String> typed() throws IOException {
        return Files.readAllLines(GUIDE).stream()
                .filter(line -> line.startsWith(TYPED))
                .toList();
    }

    /** The guide's folders are those of who builds; here they are the test's. */
    private String[] arguments(String line) throws IOException {
        Files.createDirectories(temporary.resolve("target"));
        return line.substring(TYPED.length())
                .replace("product/target/demo-home", home())
                .replace(
                        "product/target/maker.key",
                        temporary.resolve("maker.key").toString())
                .replace("product/target/", temporary.resolve("target") + "/")
                .replace("product/examples/", ROOT.resolve("product/examples") + "/")
                .split(" +");
    }

    private String home() {
        return temporary.resolve("home").toString();
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>(files(EXAMPLE.resolve("src/main/java"))
                .filter(file -> !file.endsWith("package-info.java"))
                .toList());
        sources.addAll(files(EXAMPLE.resolve("src/test/java")).toList());
        return sources;
    }

    private static Stream<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList().stream();
        }
    }
}
