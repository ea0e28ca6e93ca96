package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DefaultFolderTest {
    private static final Path USER = Path.of("/home/ana");

    @Test
    void is_where_each_system_keeps_a_users_data() {
        assertThat(DefaultFolder.of("Linux", USER, Map.of())).isEqualTo(USER.resolve(".local/share/wickbench"));
        assertThat(DefaultFolder.of("Linux", USER, Map.of("XDG_DATA_HOME", "/data")))
                .isEqualTo(Path.of("/data/wickbench"));
        assertThat(DefaultFolder.of("Windows 11", USER, Map.of("APPDATA", "/roaming")))
                .isEqualTo(Path.of("/roaming/wickbench"));
        assertThat(DefaultFolder.of("Mac OS X", USER, Map.of()))
                .isEqualTo(USER.resolve("Library/Application Support/wickbench"));
    }

    @Test
    void passes_over_a_blank_variable() {
        assertThat(DefaultFolder.of("Linux", USER, Map.of("XDG_DATA_HOME", " ")))
                .isEqualTo(USER.resolve(".local/share/wickbench"));
    }
}
