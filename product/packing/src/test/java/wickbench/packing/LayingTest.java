package wickbench.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an edition's folder holds, and what is found when it is not as it should be. */
class LayingTest {

    private static final Target HERE = Target.here();
    private static final Target WINDOWS = Target.all().get(1);

    @TempDir
    private Path folder;

    static Stream<Target> targets() {
        return Target.all().stream();
    }

    @ParameterizedTest
    @MethodSource("targets")
    void what_was_laid_has_no_fault(Target target) throws Exception {
        assertThat(Inspection.of(laid(target), target)).isEmpty();
    }

    @Test
    void it_holds_what_it_requires_and_nothing_else() throws Exception {
        assertThat(contents(laid(WINDOWS)).keySet())
                .containsExactlyInAnyOrder(
                        "README.txt",
                        "bin/wickbench.cmd",
                        "demo/plant.json",
                        "docs/guide.md",
                        "docs/pictures/shown.png",
                        "features/base.json",
                        "features/complete.json",
                        "features/stock.json",
                        "lib/launcher.jar",
                        "repo/test/ground/1/ground-1.jar",
                        "repo/test/stock/1/stock-1.jar",
                        "repo/test/window.win32.x86_64/1/window.win32.x86_64-1.jar",
                        "share/wickbench-256.png",
                        "share/wickbench-48.png",
                        "share/wickbench.svg");
    }

    @Test
    void its_folder_bears_the_version_so_that_the_next_lies_beside_it() throws Exception {
        assertThat(laid(HERE)).hasFileName("wickbench-room-1");
    }

    @Test
    void laid_twice_it_is_the_same_to_the_byte() throws Exception {
        Map<String, Integer> first = contents(laid(HERE));
        assertThat(contents(laid(HERE))).isEqualTo(first);
    }

    @Test
    void no_word_is_left_open() throws Exception {
        Path laid = laid(HERE);
        assertThat(laid.resolve("README.txt"))
                .content()
                .startsWith("The room 1\n")
                .doesNotContain("@");
        assertThat(laid.resolve("share/wickbench-room.desktop"))
                .content()
                .contains("Name=The room\n", "Exec=\"@folder@/bin/wickbench\"");
    }

    @Test
    void a_prepared_edition_says_that_it_was_never_run() throws Exception {
        assertThat(laid(WINDOWS).resolve("README.txt")).content().contains("was never run on this system");
        assertThat(laid(HERE).resolve("README.txt")).content().doesNotContain("never run");
    }

    @Test
    void a_missing_script_a_missing_bundle_and_one_too_many_are_named() throws Exception {
        Path laid = laid(HERE);
        Files.delete(laid.resolve("bin/wickbench"));
        Files.delete(laid.resolve("repo/test/ground/1/ground-1.jar"));
        assertThat(Inspection.of(laid, HERE))
                .hasSize(2)
                .anyMatch(fault -> fault.startsWith("no launch script"))
                .anyMatch(fault -> fault.startsWith("bundle test:ground:1 is missing"));
        laid = laid(HERE);
        Files.writeString(laid.resolve("repo/stray.jar"), "");
        assertThat(Inspection.of(laid, HERE)).singleElement().asString().startsWith("nobody asks for");
    }

    @Test
    void a_fragment_of_another_platform_and_a_signature_are_named() throws Exception {
        Path laid = laid(HERE);
        assertThat(Inspection.of(laid, WINDOWS)).anyMatch(fault -> fault.contains("window.win32.x86_64:1 is missing"));
        String name = "repo/test/window.%1$s.%2$s/1/window.%1$s.%2$s-1.jar"
                .formatted(HERE.platform().os(), HERE.platform().arch());
        Path other = folder.resolve("product/repo/test/window.win32.x86_64/1/window.win32.x86_64-1.jar");
        Files.copy(other, laid.resolve(name), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(Inspection.of(laid, HERE))
                .hasSize(2)
                .anyMatch(fault -> fault.startsWith("still signed"))
                .anyMatch(fault -> fault.endsWith("is for win32 on x86_64"));
    }

    private Path laid(Target target) throws Exception {
        var small = new SmallProduct(folder.resolve("product"));
        return new Laying(small.lay(), small.edition("stock"), target).below(folder.resolve("laid"));
    }

    /** Each file by its place, with a hash of its bytes. */
    private static Map<String, Integer> contents(Path laid) throws IOException {
        var contents = new TreeMap<String, Integer>();
        for (Path file : Papers.files(laid)) {
            contents.put(laid.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
        }
        return contents;
    }
}
