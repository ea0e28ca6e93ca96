package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Links to the page of a run, without a window. */
class RunLinkTest {

    @ParameterizedTest
    @EnumSource(Stage.class)
    void a_stage_is_named_by_its_code(Stage stage) {
        assertThat(RunLink.of(stage.code())).contains(new RunLink.At(stage));
    }

    @Test
    void a_strip_is_named_by_its_number() {
        assertThat(RunLink.of("strip:3")).contains(new RunLink.Strip(3));
        assertThat(RunLink.of("strip:0012")).contains(new RunLink.Strip(12));
    }

    @Test
    void what_is_due_is_named_by_its_key_whatever_stands_in_it() {
        assertThat(RunLink.of("due:L2-change@now")).contains(new RunLink.Due("L2-change@now"));
        assertThat(RunLink.of("due:strip:3")).contains(new RunLink.Due("strip:3"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "strip:", "strip:x", "strip:-1", "strip:12345", "Clock", "demo/run-sheet.csv"})
    void anything_else_leads_nowhere_here(String written) {
        assertThat(RunLink.of(written)).isEmpty();
    }
}
