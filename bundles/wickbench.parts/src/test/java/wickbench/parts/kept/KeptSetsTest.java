package wickbench.parts.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.parts.SmallProduct;
import wickbench.parts.StubbornActivator;
import wickbench.testing.Schemas;

/** Sets that come and go in a real framework: all or nothing, remembered, and never a step back. */
class KeptSetsTest {
    private static final List<String> PLAIN = List.of("Import-Package: ground");

    @TempDir
    Path folder;

    private SmallProduct product;
    private Path home;

    @BeforeEach
    void lay() {
        product = new SmallProduct(folder.resolve("product"));
        home = folder.resolve("home");
    }

    @Test
    void a_set_runs_at_once_and_after_each_start_until_it_is_removed() throws Exception {
        Path archive = product.signed("extra", "1.0.0", Map.of("a", PLAIN, "b", PLAIN));
        try (SmallProgram program = program("base")) {
            program.sets().add(program.sets().read(archive));
            assertThat(program.bundles()).containsExactly("a a-1.0.0.jar", "b b-1.0.0.jar", "ground ground-0.1.0.jar");
        }
        Files.delete(archive);
        try (SmallProgram program = program("base")) {
            assertThat(program.bundles()).hasSize(3);
            program.sets().close();
            assertThat(program.bundles()).containsExactly("ground ground-0.1.0.jar");
        }
        try (SmallProgram program = program("base")) {
            program.sets().remove("extra");
            assertThat(program.bundles()).containsExactly("ground ground-0.1.0.jar");
        }
        try (SmallProgram program = program("base")) {
            assertThat(program.bundles()).hasSize(1);
            assertThat(program.warnings()).isEmpty();
        }
        try (var files = Files.list(home.resolve("parts"))) {
            assertThat(files).extracting(Path::getFileName).hasToString("[sets.json]");
        }
    }

    @Test
    void a_set_of_the_product_goes_and_comes_again() throws Exception {
        product.holds("more", "0.1.0", Map.of("m", PLAIN));
        try (SmallProgram program = program("base", "more")) {
            program.sets().remove("more");
            assertThat(program.bundles()).hasSize(1);
        }
        try (SmallProgram program = program("base", "more")) {
            assertThat(program.bundles()).hasSize(1);
            program.sets().add(program.sets().product().all().get("more"));
            assertThat(program.bundles()).hasSize(2);
        }
        try (SmallProgram program = program("base", "more")) {
            assertThat(program.bundles()).hasSize(2);
        }
        try (SmallProgram program = program("base")) {
            program.sets().add(program.sets().product().all().get("more"));
        }
        try (SmallProgram program = program("base")) {
            assertThat(program.bundles()).hasSize(2);
        }
    }

    @Test
    void a_newer_one_takes_the_place_of_an_older_one_and_an_older_one_never() throws Exception {
        Path first = product.signed("extra", "1.0.0", Map.of("a", PLAIN));
        Path second = product.signed("extra", "1.1.0", Map.of("a", PLAIN));
        try (SmallProgram program = program("base")) {
            program.sets().add(program.sets().read(first));
            program.sets().add(program.sets().read(second));
            assertThat(program.bundles()).contains("a a-1.1.0.jar").hasSize(2);
            assertRefused("part.older", () -> program.sets().read(first));
            program.sets().remove("extra");
            assertRefused("part.older", () -> program.sets().read(first));
            program.sets().add(program.sets().read(second));
        }
        try (SmallProgram program = program("base")) {
            assertThat(program.bundles()).contains("a a-1.1.0.jar");
        }
    }

    @Test
    void what_was_exchanged_or_put_back_in_a_home_does_not_run_and_is_told() throws Exception {
        Path first = product.signed("extra", "1.0.0", Map.of("a", PLAIN));
        Path second = product.signed("extra", "1.1.0", Map.of("a", PLAIN));
        try (SmallProgram program = program("base")) {
            program.sets().add(program.sets().read(second));
        }
        Path kept = home.resolve("parts/extra-1.1.0.zip");
        byte[] right = Files.readAllBytes(kept);
        for (byte[] other : List.of(Files.readAllBytes(first), new byte[0], changed(right))) {
            Files.write(kept, other);
            try (SmallProgram program = program("base")) {
                assertThat(program.bundles()).containsExactly("ground ground-0.1.0.jar");
                assertThat(program.warnings()).singleElement().asString().startsWith("extra is left out: ");
                assertThat(program.sets().troubles()).containsOnlyKeys("extra");
            }
        }
        // signed by somebody who is no longer known here
        Files.write(kept, right);
        Files.delete(product.folder().resolve("makers/site.pem"));
        try (SmallProgram program = program("base")) {
            assertThat(program.sets().troubles().get("extra")).contains("signed by no maker");
            program.sets().remove("extra");
            assertThat(program.sets().troubles()).isEmpty();
        }
        assertThat(kept).doesNotExist();
    }

    @Test
    void what_cannot_run_leaves_everything_as_it_was() throws Exception {
        Path good = product.signed("extra", "1.0.0", Map.of("a", PLAIN));
        try (SmallProgram program = program("base")) {
            program.sets().add(program.sets().read(good));
            String list = Files.readString(home.resolve("parts/sets.json"));
            int count = program.count();
            refuse(
                    program,
                    "part.unresolved",
                    product.signed("odd", "1.0.0", Map.of("o", List.of("Import-Package: nowhere"))));
            refuse(program, "part.bundle-there", product.signed("odd", "1.1.0", Map.of("a", PLAIN, "o", PLAIN)));
            refuse(program, "part.bundle-there", product.signed("odd", "1.2.0", Map.of("o", PLAIN, "ground", PLAIN)));
            refuse(program, "part.start", product.signed("odd", "1.3.0", Map.of("n", PLAIN, "o", stubborn())));
            refuse(program, "part.requires-other", product.signed("odd", "1.4.0", "0.2.0", Map.of("o", PLAIN)));
            refuse(program, "part.start", product.signed("extra", "1.1.0", Map.of("a", stubborn())));
            refuse(program, "part.ground", product.signed("base", "9.0.0", Map.of("o", PLAIN)));
            refuse(program, "part.running", good);
            refuse(
                    program,
                    "part.bundle-broken",
                    product.signed("nameless.zip", feature("odd"), Map.of("o-1.0.0.jar", jar(""))));
            refuse(
                    program,
                    "part.bundle-broken",
                    product.signed("nojar.zip", feature("odd"), Map.of("o-1.0.0.jar", new byte[9])));
            assertThat(program.bundles()).containsExactly("a a-1.0.0.jar", "ground ground-0.1.0.jar");
            assertThat(program.count()).isEqualTo(count);
            assertThat(Files.readString(home.resolve("parts/sets.json"))).isEqualTo(list);
            try (var files = Files.list(home.resolve("parts"))) {
                assertThat(files).hasSize(2);
            }
        }
    }

    @Test
    void bundles_that_the_list_does_not_name_or_that_are_not_there_are_refused() throws Exception {
        try (SmallProgram program = program("base")) {
            assertThatThrownBy(() -> program.sets().read(product.signed("a.zip", feature("odd"), Map.of())))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("test:o:1.0.0, which is not in the archive");
            Map<String, byte[]> more = Map.of("o-1.0.0.jar", jar("o"), "p-1.0.0.jar", jar("p"));
            assertThatThrownBy(() -> program.sets().read(product.signed("b.zip", feature("odd"), more)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("p-1.0.0.jar, which is in the archive");
        }
    }

    @Test
    void what_others_stand_on_stays() throws Exception {
        try (SmallProgram program = program("base")) {
            assertRefused("part.ground", () -> program.sets().remove("base"));
            assertRefused("part.not-running", () -> program.sets().remove("nothing"));
            Path below = product.signed("below", "1.0.0", Map.of("b", List.of("Export-Package: low")));
            Path above = product.signed("above", "1.0.0", Map.of("a", List.of("Import-Package: low")));
            program.sets().add(program.sets().read(below));
            program.sets().add(program.sets().read(above));
            assertRefused("part.needed", () -> program.sets().remove("below"));
            assertThat(program.bundles()).hasSize(3);
            program.sets().close();
            assertThat(program.bundles()).hasSize(1);
        }
    }

    @Test
    void a_list_that_cannot_be_read_is_told_and_the_program_starts() throws Exception {
        Files.createDirectories(home.resolve("parts"));
        Files.writeString(home.resolve("parts/sets.json"), "{\"v\":2}");
        try (SmallProgram program = program("base")) {
            assertThat(program.bundles()).hasSize(1);
            assertThat(program.warnings()).singleElement().asString().contains("sets.json");
        }
    }

    @Test
    void the_list_is_as_its_schema_says() throws Exception {
        product.holds("more", "0.1.0", Map.of("m", PLAIN)).holds("less", "0.1.0", Map.of("l", PLAIN));
        try (SmallProgram program = program("base", "less")) {
            program.sets().add(program.sets().read(product.signed("extra", "1.0.0", Map.of("a", PLAIN))));
            program.sets().add(program.sets().product().all().get("more"));
            program.sets().remove("less");
        }
        String list = Files.readString(home.resolve("parts/sets.json"));
        assertThat(list).contains("\"extra\"", "[\"more\"]", "[\"less\"]");
        assertThat(Schemas.published().errors("sets-1.schema.json", list)).isEmpty();
    }

    private SmallProgram program(String... features) throws Exception {
        return new SmallProgram(product, home, Files.createTempDirectory(folder, "cache"), features);
    }

    private static void refuse(SmallProgram program, String code, Path archive) {
        assertRefused(code, () -> program.sets().add(program.sets().read(archive)));
    }

    private static void assertRefused(String code, ThrowingCallable act) {
        assertThatThrownBy(act).isInstanceOfSatisfying(Refusal.class, refused -> {
            assertThat(refused.code()).isEqualTo(code);
            assertThat(refused.getMessage().lines()).hasSize(1);
        });
    }

    private static List<String> stubborn() {
        return List.of("Bundle-Activator: " + StubbornActivator.class.getName(), "Import-Package: org.osgi.framework");
    }

    private static byte[] changed(byte[] bytes) {
        byte[] changed = bytes.clone();
        changed[bytes.length / 2] ^= 1;
        return changed;
    }

    private static byte[] jar(String name) {
        return SmallProduct.jar(name, List.of());
    }

    private static byte[] feature(String name) {
        return ("{\"feature-resource-version\": \"1.0\", \"id\": \"test:" + name
                        + ":1.0.0\", \"bundles\": [{\"id\": \"test:o:1.0.0\"}]}")
                .getBytes(StandardCharsets.UTF_8);
    }
}
