package wickbench.reading.owed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Often;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.RunControl;

/** Run controls by the site's rule; common practice, no source. */
class ControlsDueTest {
    private static final ControlRule BOTH =
            new ControlRule(Map.of(RunControl.BLANK, Often.RUN, RunControl.LOW_POSITIVE, Often.DAY));

    private final Story story = new Story();

    @Test
    void without_a_rule_no_control_is_owed() {
        story.negative("S1", "filler");

        assertThat(story.items()).isEmpty();
    }

    @Test
    void a_rule_asks_nothing_of_strips_before_it() {
        story.negative("S1", "filler");
        story.rule(BOTH);

        assertThat(story.items()).isEmpty();
    }

    @Test
    void the_first_strip_that_went_without_owes_what_is_missing() {
        story.rule(BOTH);
        Fact first = story.negative("S1", "filler");
        story.negative("S2", "hopper");

        OwedItem item = story.item(first, Step.RUN_CONTROL);
        assertThat(item.missing()).containsExactly("blank", "low-positive");
        assertThat(story.open()).containsExactly(Step.RUN_CONTROL);
    }

    @Test
    void a_control_of_the_day_is_enough_for_every_run_and_one_of_the_run_is_not() {
        story.rule(BOTH);
        Fact blank = story.control(RunControl.BLANK, Outcome.NEGATIVE);
        Fact positive = story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        story.run(Optional.empty(), blank, positive, story.negative("S1", "filler"));
        Fact next = story.negative("S2", "filler");
        story.run(Optional.empty(), next);

        assertThat(story.item(next, Step.RUN_CONTROL).missing()).containsExactly("blank");
    }

    @Test
    void a_control_run_later_answers_and_a_failed_one_owes_its_own_repeat_only() {
        story.rule(new ControlRule(Map.of(RunControl.LOW_POSITIVE, Often.RUN)));
        Fact sample = story.negative("S1", "filler");
        story.run(Optional.empty(), sample);
        Fact control = story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);

        OwedItem item = story.item(sample, Step.RUN_CONTROL);
        assertThat(item.done()).isTrue();
        assertThat(item.answers()).containsExactly(control.id());
        assertThat(story.open()).containsExactlyInAnyOrder(Step.REPEAT_CONTROL, Step.REPEAT_AFTER_CONTROL);
    }

    @Test
    void another_kit_has_controls_of_its_own() {
        story.rule(BOTH);
        story.control(RunControl.BLANK, Outcome.NEGATIVE);
        story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        Fact other = story.kit("nut-swab", "L78").negative("S1", "filler");

        assertThat(story.item(other, Step.RUN_CONTROL).missing()).containsExactly("blank", "low-positive");
    }

    @Test
    void what_was_decided_on_is_done() {
        story.rule(BOTH);
        Fact first = story.negative("S1", "filler");
        story.decide(first, Owed.RUN_CONTROL);

        assertThat(story.open()).isEmpty();
    }

    @Test
    void the_clean_that_a_run_tells_of_is_a_clean_of_its_place() {
        Fact positive = story.positive("S1", "filler");
        java.time.Instant cleaned = story.next();
        story.neighbours(positive);
        Fact again = story.negative("S2", "filler");
        assertThat(story.open()).contains(Step.RE_CLEAN, Step.RE_TEST);
        story.run(Optional.of(cleaned), again);

        assertThat(story.open()).containsExactly(Step.HOLD);
        assertThat(story.shuffled(3)).isEqualTo(story.items());
    }
}
