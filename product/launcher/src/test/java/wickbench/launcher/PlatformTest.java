package wickbench.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlatformTest {

    @ParameterizedTest
    @CsvSource({
        "Linux, amd64, linux, x86_64",
        "Linux, aarch64, linux, aarch64",
        "Windows 11, amd64, win32, x86_64",
        "Mac OS X, aarch64, macosx, aarch64"
    })
    void java_names_become_feature_names(String osName, String osArch, String os, String arch) {
        assertThat(Platform.of(osName, osArch)).isEqualTo(new Platform(os, arch));
    }

    @Test
    void what_names_no_platform_suits_every_platform() {
        assertThat(new Platform("linux", "x86_64").suits(Map.of("id", "x"))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"linux, x86_64, true", "linux, aarch64, false", "win32, x86_64, false"})
    void both_the_system_and_the_processor_must_fit(String os, String arch, boolean fits) {
        assertThat(new Platform("linux", "x86_64").suits(Map.of("os", os, "arch", arch)))
                .isEqualTo(fits);
    }
}
