package wickbench.reading.owed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.doubt.Doubt;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.RunControl;

/** Negatives that something put in doubt; common practice, no source. */
class InDoubtTest {
    private static final LotId LOT = new LotId("L77");

    private final Story story = new Story();

    @Test
    void a_rejected_lot_opens_a_decision_on_each_negative_read_with_it_and_on_nothing_else() {
        Fact touched = story.negative("S1", "filler");
        story.positive("S2", "filler");
        story.test("S3", "filler", 1, Outcome.INVALID, false);
        story.control(RunControl.BLANK, Outcome.NEGATIVE);
        story.kit("nut-swab", "L78").negative("S4", "filler");

        Fact rejected = story.doubt(Doubt.ofLot("lot.rejected", LOT, Optional.empty()));

        assertThat(touched()).containsExactly(touched.id());
        OwedItem item = story.item(touched, Step.DECIDE);
        assertThat(item.missing()).containsExactly("lot.rejected");
        assertThat(item.doubts()).containsExactly(rejected.id());
        assertThat(item.since()).isEqualTo(rejected.at());
    }

    @Test
    void it_is_the_same_when_the_doubt_was_known_before_the_strip() {
        story.doubt(Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        Fact late = story.negative("S1", "filler");

        assertThat(touched()).containsExactly(late.id());
    }

    @Test
    void only_strips_started_within_its_time_are_touched_both_bounds_exact() {
        Fact before = story.negative("S1", "filler");
        Instant from = story.next();
        Fact first = story.negative("S2", "filler");
        Instant to = story.next();
        Fact after = story.negative("S3", "filler");
        story.doubt(new Doubt(
                "lot.storage",
                Optional.of(LOT),
                Optional.empty(),
                Optional.empty(),
                Optional.of(from),
                Optional.of(to)));

        assertThat(touched()).containsExactly(first.id()).doesNotContain(before.id(), after.id());
    }

    @Test
    void a_suspended_operator_and_a_withdrawn_method_come_by_the_same_door() {
        Fact mine = story.reader("op-07").negative("S1", "filler");
        Fact theirs = story.reader("op-01").negative("S2", "filler");
        Fact gluten = story.kit("gluten-rinse", "L90").negative("S3", "filler");

        story.doubt(Doubt.ofOperator("operator.suspended", new PersonId("op-07"), Optional.empty()));
        assertThat(touched()).containsExactly(mine.id());
        story.doubt(Doubt.ofMethod("method.withdrawn", new MethodId("gluten-rinse"), Optional.empty()));
        assertThat(touched()).containsExactlyInAnyOrder(mine.id(), gluten.id()).doesNotContain(theirs.id());
    }

    @Test
    void all_that_is_stated_must_fit() {
        Fact both = story.reader("op-07").negative("S1", "filler");
        story.kit("gluten-rinse", "L77").negative("S2", "filler");
        story.doubt(new Doubt(
                "operator.suspended",
                Optional.empty(),
                Optional.of(new MethodId("nut-swab")),
                Optional.of(new PersonId("op-07")),
                Optional.empty(),
                Optional.empty()));

        assertThat(touched()).containsExactly(both.id());
    }

    @Test
    void a_decision_answers_the_doubts_that_it_names_and_no_later_one() {
        Fact touched = story.negative("S1", "filler");
        Fact warm = story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));
        Fact decision = story.decide(touched, Owed.DECIDE, warm);
        assertThat(story.open()).isEmpty();
        assertThat(story.item(touched, Step.DECIDE).answers()).containsExactly(decision.id());

        Fact rejected = story.doubt(Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        assertThat(story.item(touched, Step.DECIDE).doubts()).containsExactly(rejected.id());
        assertThat(story.open()).containsExactly(Step.DECIDE);
    }

    @Test
    void a_decision_on_the_doubt_answers_the_results_that_it_names() {
        Fact one = story.negative("S1", "filler");
        Fact other = story.negative("S2", "belt");
        Fact rejected = story.doubt(Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        story.decide(rejected, Owed.DECIDE, one);
        assertThat(story.item(one, Step.DECIDE).done()).isTrue();

        // as when another station's strip comes in after the decision
        assertThat(story.item(other, Step.DECIDE).done()).isFalse();
    }

    @Test
    void a_decision_on_something_else_or_without_a_name_answers_nothing() {
        Fact touched = story.negative("S1", "filler");
        Fact rejected = story.doubt(Doubt.ofLot("lot.rejected", LOT, Optional.empty()));
        story.decide(touched, Owed.HOLD, rejected);
        story.decide(touched, Owed.DECIDE);

        assertThat(story.open()).containsExactly(Step.DECIDE);
    }

    @Test
    void a_lot_trusted_again_touches_no_later_strip_and_keeps_the_earlier_ones_open() {
        Fact before = story.negative("S1", "filler");
        Fact warm = story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));
        story.trust(warm);
        story.negative("S2", "filler");

        assertThat(touched()).containsExactly(before.id());
        for (long seed = 0; seed < 20; seed++) {
            assertThat(story.shuffled(seed)).isEqualTo(story.items());
        }
    }

    private List<java.util.UUID> touched() {
        return story.items().stream()
                .filter(item -> item.step() == Step.DECIDE && !item.done())
                .map(OwedItem::owes)
                .toList();
    }

    @Test
    void a_negative_that_holds_is_owed_its_hold_and_no_decision_besides() {
        story.test("S1", "filler", 1, Outcome.NEGATIVE, false, Owed.HOLD);
        story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));

        assertThat(touched()).isEmpty();
    }

    @Test
    void of_two_doubts_of_one_entry_and_cause_one_decision_answers_both() {
        Fact touched = story.negative("S1", "filler");
        Fact cold = story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));
        story.told(new Fact.Doubted(cold.id(), cold.at(), Doubt.ofLot("lot.storage", LOT, Optional.empty())));
        assertThat(story.item(touched, Step.DECIDE).doubts()).containsExactly(cold.id());
        assertThat(story.item(touched, Step.DECIDE).missing()).containsExactly("lot.storage");

        Fact decision = story.decide(touched, Owed.DECIDE, cold);
        assertThat(story.item(touched, Step.DECIDE).answers()).containsExactly(decision.id());
    }

    @Test
    void a_decision_of_another_kind_answers_no_doubt() {
        Fact touched = story.negative("S1", "filler");
        Fact warm = story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));
        story.decide(touched, Owed.RE_TEST, warm);

        assertThat(story.open()).containsExactly(Step.DECIDE);
    }

    @Test
    void whoever_is_trusted_again_twice_is_so_from_the_later_time_on() {
        Fact warm = story.doubt(Doubt.ofLot("lot.storage", LOT, Optional.empty()));
        story.trust(warm);
        Fact between = story.negative("S1", "filler");
        story.trust(warm);
        story.negative("S2", "filler");

        assertThat(touched()).containsExactly(between.id());
    }
}
