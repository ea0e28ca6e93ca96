package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void makes_columns_as_wide_as_their_widest_cell() {
        assertThat(TextTable.of(List.of("Sample", "µg"), List.of(List.of("A", "0.25"), List.of("Longer one", "1"))))
                .containsExactly(
                        "Sample      µg", //
                        "──────────  ────",
                        "A           0.25",
                        "Longer one  1");
    }

    @Test
    void keeps_its_header_without_rows() {
        assertThat(TextTable.of(List.of("Sample"), List.of())).containsExactly("Sample", "──────");
    }
}
