package wickbench.reading.owed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;

/** Repeats, holds, re-cleans and re-tests; common practice, no source. */
class OwedFoldTest {
    private final Story story = new Story();

    @Test
    void an_invalid_strip_is_repeated_once_from_the_same_extract() {
        Fact first = story.invalid("S1", "filler");
        assertThat(story.open()).containsExactly(Step.REPEAT_SAME_EXTRACT);

        Fact repeat = story.negative("S1", "filler");

        OwedItem item = story.item(first, Step.REPEAT_SAME_EXTRACT);
        assertThat(item.done()).isTrue();
        assertThat(item.answers()).containsExactly(repeat.id());
    }

    @Test
    void two_invalid_strips_of_one_extract_ask_for_a_new_sample_and_call_quality() {
        Fact first = story.invalid("S1", "filler");
        Fact second = story.invalid("S1", "filler");

        OwedItem item = story.item(first, Step.REPEAT_NEW_SAMPLE);
        assertThat(item.callQuality()).isTrue();
        assertThat(item.answers()).containsExactly(second.id());
        assertThat(story.open()).containsExactly(Step.REPEAT_NEW_SAMPLE);

        story.negative("S2", "filler");
        assertThat(story.open()).isEmpty();
    }

    @Test
    void an_invalid_new_sample_stops_until_somebody_decides() {
        Fact first = story.invalid("S1", "filler");
        story.invalid("S1", "filler");
        story.invalid("S2", "filler");
        assertThat(story.open()).containsExactly(Step.STOP_AND_CALL_QUALITY);

        story.negative("S3", "filler");
        assertThat(story.open()).containsExactly(Step.STOP_AND_CALL_QUALITY);

        story.decide(first, Owed.REPEAT);
        assertThat(story.open()).isEmpty();
    }

    @Test
    void a_new_sample_that_is_invalid_before_the_extract_was_repeated_stops_too() {
        story.invalid("S1", "filler");
        story.invalid("S2", "filler");

        assertThat(story.open()).containsExactly(Step.STOP_AND_CALL_QUALITY);
    }

    @Test
    void another_place_answers_nothing() {
        story.invalid("S1", "filler");
        story.negative("S2", "hopper");

        assertThat(story.open()).containsExactly(Step.REPEAT_SAME_EXTRACT);
    }

    @Test
    void a_thinner_strip_is_no_repeat() {
        story.invalid("S1", "filler");
        story.test("S1", "filler", 10, Outcome.NEGATIVE, false);

        assertThat(story.open()).containsExactly(Step.REPEAT_SAME_EXTRACT);
    }

    @Test
    void a_sign_of_allergen_holds_until_repeated_a_positive_until_decided() {
        story.sign("S1", "filler");
        assertThat(story.open()).containsExactly(Step.REPEAT_SAME_EXTRACT, Step.HOLD);
        story.negative("S1", "filler");
        assertThat(story.open()).isEmpty();

        Fact positive = story.positive("S2", "hopper");
        story.negative("S2", "hopper");
        assertThat(story.open()).contains(Step.HOLD);
        story.decide(positive, Owed.HOLD);
        assertThat(story.open()).doesNotContain(Step.HOLD);
    }

    @Test
    void a_positive_asks_for_a_clean_and_then_for_samples_of_the_point_and_its_neighbours() {
        Fact positive = story.positive("S1", "filler");
        story.decide(positive, Owed.HOLD);
        story.negative("S2", "filler");
        assertThat(story.item(positive, Step.RE_TEST).missing()).containsExactly("filler");
        assertThat(story.open()).containsExactly(Step.RE_CLEAN, Step.RE_TEST);

        Fact clean = story.clean("Line 2");
        assertThat(story.item(positive, Step.RE_CLEAN).answers()).containsExactly(clean.id());
        story.neighbours(positive, "hopper", "belt");
        story.negative("S3", "filler");
        story.negative("S4", "hopper");
        assertThat(story.item(positive, Step.RE_TEST).missing()).containsExactly("belt");
        assertThat(story.open()).containsExactly(Step.RE_TEST);

        story.negative("S5", "belt");
        assertThat(story.open()).isEmpty();
    }

    @Test
    void a_re_test_stays_open_until_the_neighbours_are_named_and_the_last_word_counts() {
        Fact positive = story.positive("S1", "filler");
        story.decide(positive, Owed.HOLD);
        story.cleanedThenNegative("S2", "filler");
        assertThat(story.open()).containsExactly(Step.RE_TEST);
        assertThat(story.item(positive, Step.RE_TEST).neighboursNamed()).isFalse();

        story.neighbours(positive, "belt");
        assertThat(story.item(positive, Step.RE_TEST).missing()).containsExactly("belt");
        story.neighbours(positive);
        assertThat(story.open()).isEmpty();
    }

    @Test
    void a_soiled_place_owes_a_clean_without_any_test() {
        Fact look = story.look("filler", Visual.SOILED);
        story.look("filler", Visual.CLEAN);
        assertThat(story.open()).containsExactly(Step.RE_CLEAN);

        story.clean("hopper");
        assertThat(story.open()).hasSize(1);
        story.clean("filler");
        assertThat(story.item(look, Step.RE_CLEAN).done()).isTrue();
    }

    @Test
    void a_negative_without_hook_line_waits_for_both_dilutions() {
        Fact neat = story.test("S1", "filler", 1, Outcome.NEGATIVE, false, Owed.REPEAT_DILUTED);
        assertThat(story.item(neat, Step.REPEAT_DILUTED).missing()).containsExactly("10", "100");

        story.test("S1", "filler", 10, Outcome.NEGATIVE, false);
        story.test("S1", "filler", 100, Outcome.INVALID, false);
        assertThat(story.item(neat, Step.REPEAT_DILUTED).missing()).containsExactly("100");
        story.test("S1", "filler", 100, Outcome.NEGATIVE, false);
        assertThat(story.open()).isEmpty();
    }

    @Test
    void an_amount_above_the_range_is_thinned_until_a_strip_can_tell() {
        Fact above = story.test("S1", "filler", 1, Outcome.POSITIVE_ABOVE_RANGE, false, Owed.BRACKET);
        story.test("S1", "filler", 10, Outcome.POSITIVE_ABOVE_RANGE, false);
        assertThat(story.item(above, Step.BRACKET).missing()).containsExactly("100");

        story.test("S1", "filler", 100, Outcome.POSITIVE, false);
        assertThat(story.item(above, Step.BRACKET).done()).isTrue();
    }

    @Test
    void new_samples_after_a_diluted_positive_may_be_thinned_less_but_not_more() {
        Fact diluted = story.test("S1", "filler", 10, Outcome.POSITIVE, false, Owed.RE_TEST);
        story.neighbours(diluted);
        story.clean("filler");
        story.test("S2", "filler", 100, Outcome.NEGATIVE, false);
        assertThat(story.item(diluted, Step.RE_TEST).missing()).containsExactly("filler");

        Fact neat = story.negative("S3", "filler");
        assertThat(story.item(diluted, Step.RE_TEST).done()).isTrue();
        assertThat(story.item(diluted, Step.RE_TEST).answers()).containsExactly(neat.id());
    }

    @Test
    void a_failed_control_is_run_again_and_shades_the_negatives_since_the_last_good_one() {
        story.negative("S0", "belt");
        story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        Fact shaded = story.negative("S1", "filler");
        story.positive("S2", "hopper");
        Fact failed = story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        assertThat(story.open()).contains(Step.REPEAT_CONTROL);
        assertThat(story.items())
                .filteredOn(item -> item.step() == Step.REPEAT_AFTER_CONTROL)
                .extracting(OwedItem::owes)
                .containsExactly(shaded.id());

        story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        story.negative("S1", "filler");
        assertThat(story.item(failed, Step.REPEAT_CONTROL).done()).isTrue();
        assertThat(story.item(shaded, Step.REPEAT_AFTER_CONTROL).done()).isTrue();
    }

    @Test
    void a_failed_blank_shades_nothing() {
        story.negative("S1", "filler");
        story.control(RunControl.BLANK, Outcome.POSITIVE);

        assertThat(story.open()).containsExactly(Step.REPEAT_CONTROL);
    }

    @Test
    void the_order_in_which_facts_come_does_not_matter() {
        Fact positive = story.positive("S1", "filler");
        story.invalid("S2", "hopper");
        story.clean("filler");
        story.neighbours(positive, "hopper");
        story.invalid("S2", "hopper");
        story.negative("S3", "hopper");
        story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        story.negative("S4", "filler");

        for (long seed = 0; seed < 50; seed++) {
            assertThat(story.shuffled(seed)).isEqualTo(story.items());
        }
    }

    @Test
    void strips_of_another_method_or_lot_answer_nothing() {
        story.invalid("S1", "filler");
        story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        story.kit("gluten-rinse", "L77").negative("S1", "filler");
        story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        story.kit("nut-swab", "L78").control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);

        assertThat(story.open()).containsExactly(Step.REPEAT_SAME_EXTRACT, Step.REPEAT_CONTROL);
    }

    @Test
    void a_failed_control_shades_its_own_kit_only_and_each_negative_once() {
        story.kit("nut-swab", "L78").negative("S0", "belt");
        Fact mine = story.kit("nut-swab", "L77").negative("S1", "filler");
        story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        story.control(RunControl.LOW_POSITIVE, Outcome.INVALID);
        story.negative("S2", "belt");
        story.invalid("S1", "filler");
        story.test("S1", "filler", 10, Outcome.NEGATIVE, false);
        story.kit("gluten-rinse", "L77").negative("S1", "filler");

        assertThat(story.items())
                .filteredOn(item -> item.step() == Step.REPEAT_AFTER_CONTROL)
                .extracting(OwedItem::owes)
                .containsExactly(mine.id());
        assertThat(story.item(mine, Step.REPEAT_AFTER_CONTROL).done()).isFalse();
        story.kit("nut-swab", "L79").negative("S3", "filler");
        assertThat(story.item(mine, Step.REPEAT_AFTER_CONTROL).done()).isTrue();
    }

    @Test
    void a_good_control_answers_failed_ones_before_it_only() {
        story.control(RunControl.LOW_POSITIVE, Outcome.POSITIVE);
        story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        story.control(RunControl.BLANK, Outcome.NEGATIVE);

        assertThat(story.open()).containsExactly(Step.REPEAT_CONTROL);
    }

    @Test
    void a_place_not_stated_is_cleared_by_decision_only() {
        Fact positive = story.positive("S1", "");
        story.invalid("S2", "");
        story.clean("belt");
        story.cleanedThenNegative("S3", "");
        story.neighbours(positive);
        assertThat(story.open()).containsExactly(Step.HOLD, Step.RE_CLEAN, Step.RE_TEST, Step.REPEAT_SAME_EXTRACT);

        story.decide(positive, Owed.RE_TEST);
        assertThat(story.open()).containsExactly(Step.HOLD, Step.RE_CLEAN, Step.REPEAT_SAME_EXTRACT);
    }

    @Test
    void a_re_test_counts_neat_strips_of_its_method_after_the_clean() {
        Fact positive = story.positive("S1", "filler");
        story.neighbours(positive);
        story.clean("filler");
        story.test("S2", "filler", 10, Outcome.NEGATIVE, false);
        story.positive("S3", "filler");
        story.kit("gluten-rinse", "L77").negative("S4", "filler");
        assertThat(story.item(positive, Step.RE_TEST).done()).isFalse();

        story.kit("nut-swab", "L78").negative("S5", "filler");
        assertThat(story.item(positive, Step.RE_TEST).done()).isTrue();
    }

    @Test
    void a_positive_dilution_overturns_the_negative_without_the_other_one() {
        Fact neat = story.test("S1", "filler", 1, Outcome.NEGATIVE, false, Owed.REPEAT_DILUTED);
        story.test("S1", "filler", 10, Outcome.POSITIVE, false, Owed.HOLD);

        assertThat(story.item(neat, Step.REPEAT_DILUTED).done()).isTrue();
        assertThat(story.open()).containsExactly(Step.HOLD);
    }

    @Test
    void a_thinner_or_invalid_strip_ends_no_hold_of_a_sign() {
        Fact sign = story.sign("S1", "filler");
        story.test("S1", "filler", 10, Outcome.NEGATIVE, false);
        story.invalid("S1", "filler");
        assertThat(story.item(sign, Step.HOLD).done()).isFalse();

        story.negative("S1", "filler");
        assertThat(story.item(sign, Step.HOLD).done()).isTrue();
    }

    @Test
    void the_second_strip_of_a_new_sample_is_no_first_repeat() {
        Fact first = story.invalid("S1", "filler");
        story.invalid("S1", "filler");
        Fact third = story.invalid("S1", "filler");

        assertThat(story.open()).containsExactly(Step.STOP_AND_CALL_QUALITY);
        assertThat(story.item(first, Step.STOP_AND_CALL_QUALITY).answers()).contains(third.id());
    }

    @Test
    void where_no_place_is_stated_only_the_same_extract_repeats_after_a_failed_control() {
        Fact negative = story.negative("S1", "");
        story.control(RunControl.LOW_POSITIVE, Outcome.NEGATIVE);
        story.negative("S2", "");
        assertThat(story.item(negative, Step.REPEAT_AFTER_CONTROL).done()).isFalse();

        story.negative("S1", "");
        assertThat(story.item(negative, Step.REPEAT_AFTER_CONTROL).done()).isTrue();
    }

    @Test
    void a_clean_that_names_no_place_cleans_nothing_and_one_of_the_line_cleans_its_places() {
        story.positive("S1", "filler");
        story.clean("");
        assertThat(story.open()).contains(Step.RE_CLEAN);

        story.clean("Line 2");
        assertThat(story.open()).doesNotContain(Step.RE_CLEAN);

        story.positive("S2", "");
        story.clean("");
        assertThat(story.open()).contains(Step.RE_CLEAN);
    }

    @Test
    void a_run_that_names_a_strip_nobody_knows_says_nothing() {
        story.told(new Fact.Ran(
                new UUID(9, 9), story.next(), List.of(new Fact.RanStrip(new UUID(8, 8), Optional.of(story.next())))));

        assertThat(story.items()).isEmpty();
    }
}
