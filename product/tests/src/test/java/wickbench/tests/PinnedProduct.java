package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The built product beside a folder of makers with a key of one test. */
record PinnedProduct(Path folder, Path key) {

    /** Lays it. */
    static PinnedProduct lay(Path temporary) throws Exception {
        Path product = Files.createDirectory(temporary.resolve("product"));
        for (String part : List.of("features", "repo", "demo")) {
            Files.createSymbolicLink(
                    product.resolve(part), BuiltProduct.folder().resolve(part));
        }
        Path key = temporary.resolve("maker.key");
        Path open = Files.createDirectory(product.resolve("makers")).resolve("site.pem");
        try (StartedProgram maker = StartedProgram.of(List.of("base"), temporary)) {
            assertThat(maker.call("feature", "key", key.toString(), open.toString())
                            .code())
                    .isZero();
        }
        return new PinnedProduct(product, key);
    }
}
