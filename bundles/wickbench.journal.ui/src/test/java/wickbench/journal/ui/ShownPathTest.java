package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ShownPathTest {
    private static final Path OWN = Path.of("/home/ada");

    @Test
    void what_lies_below_the_own_folder_begins_with_a_tilde() {
        assertThat(ShownPath.of(Path.of("/home/ada/records/plant"), OWN)).isEqualTo("~/records/plant");
        assertThat(ShownPath.of(Path.of("/home/adam/records"), OWN)).isEqualTo("/home/adam/records");
        assertThat(ShownPath.of(Path.of("/srv/records"), OWN)).isEqualTo("/srv/records");
        assertThat(ShownPath.of(Path.of("/srv/records"), Path.of("/"))).isEqualTo("/srv/records");
    }
}
