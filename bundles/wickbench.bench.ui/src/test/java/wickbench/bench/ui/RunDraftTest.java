package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wickbench.bench.run.RunStrip;

/** What of a run that has not begun is worth taking along, without a window. */
class RunDraftTest {
    @Test
    void blank_fields_and_an_empty_list_are_not_missed() {
        assertThat(RunDraft.of(Map.of(Item.SAMPLE, " ", Item.LOT, ""), Map.of("pH", ""), List.of()))
                .isEmpty();
    }

    @Test
    void one_field_is_missed_and_the_blank_ones_come_along() {
        Map<Item, String> texts = Map.of(Item.SAMPLE, "r-1", Item.LOT, "");

        assertThat(RunDraft.of(texts, Map.of("pH", "6.8"), List.of()))
                .contains(new RunDraft(texts, Map.of("pH", "6.8"), List.of()));
    }

    @Test
    void a_strip_in_the_list_is_missed_though_nothing_is_typed() {
        RunStrip strip = BenchStrips.strip(1, Duration.ofMinutes(5), Duration.ofMinutes(1));

        assertThat(RunDraft.of(Map.of(), Map.of(), List.of(strip)))
                .hasValueSatisfying(draft -> assertThat(draft.strips()).containsExactly(strip));
    }
}
