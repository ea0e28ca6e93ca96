package wickbench.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.launcher.InstallSet;
import wickbench.launcher.Product;

/** The editions of the product as built. */
class EditionsTest {

    private static final Product PRODUCT = Product.of(Path.of(System.getProperty("wickbench.product")));

    static Stream<Edition> editions() throws IOException {
        return Edition.all(Path.of(System.getProperty("wickbench.editions")), PRODUCT).stream();
    }

    @Test
    void there_are_three() throws IOException {
        assertThat(editions().map(Edition::name)).containsExactly("quality-desk", "stockroom", "training-room");
    }

    @Test
    void the_quality_desk_is_the_complete_product() throws Exception {
        assertThat(InstallSet.names(PRODUCT, edition("quality-desk").requires()))
                .containsExactlyInAnyOrderElementsOf(InstallSet.names(PRODUCT, List.of("complete")).stream()
                        .filter(name -> !name.equals("complete"))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("editions")
    void the_product_holds_its_bundles_for_every_platform(Edition edition) throws Exception {
        for (Target target : Target.all()) {
            assertThat(InstallSet.of(PRODUCT, edition.requires(), target.platform()))
                    .filteredOn(jar -> jar.getFileName().toString().matches("org\\.eclipse\\.swt\\.[gwc].*"))
                    .hasSize(1);
        }
    }

    /** The other platforms' editions differ in the fragment and the script alone, which a small product shows. */
    @Test
    void the_smallest_laid_for_this_machine_starts(@TempDir Path folder) throws Exception {
        Target here = Target.here();
        Path laid = new Laying(PRODUCT, edition("stockroom"), here).below(folder);
        assertThat(Inspection.of(laid, here)).isEmpty();
        Path said = folder.resolve("said.txt");
        var process = new ProcessBuilder(laid.resolve("bin/wickbench").toString(), "--help")
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        process.environment().put("XDG_CACHE_HOME", folder.resolve("caches").toString());
        process.environment().put("JAVA_HOME", System.getProperty("java.home"));
        assertThat(process.start().waitFor()).isZero();
        assertThat(said).content().contains("  stock ").doesNotContain("  training ");
    }

    private static Edition edition(String name) throws IOException {
        return editions().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    }
}
