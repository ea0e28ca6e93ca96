package wickbench.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wickbench.figures.NoAnswer;

class DrillTest {
    private static final DrillPlan SHORT = new DrillPlan(2, 1, 8, 24, 1.05);

    @Test
    void each_block_holds_its_blanks_and_plain_lines() {
        Drill drill = new SimulatedReader(0.01, 10, 0, 0).through(SHORT, 1);
        assertThat(drill.answers()).hasSize(24);
        for (int block = 0; block < 3; block++) {
            List<Shown.Kind> kinds = drill.answers().subList(8 * block, 8 * block + 8).stream()
                    .map(answer -> answer.shown().kind())
                    .toList();
            assertThat(kinds).filteredOn(kind -> kind == Shown.Kind.BLANK).hasSize(2);
            assertThat(kinds).filteredOn(kind -> kind == Shown.Kind.PLAIN).hasSize(1);
        }
        assertThat(drill.next()).isEmpty();
        assertThatThrownBy(() -> drill.answered(true)).isInstanceOf(IllegalStateException.class);
    }

    /** Blanks at the same places in every drill would soon be known. */
    @Test
    void where_blanks_come_depends_on_the_seed() {
        assertThat(IntStream.range(0, 40)
                        .mapToObj(seed ->
                                Drill.start(SHORT, seed).next().orElseThrow().kind())
                        .distinct())
                .containsExactlyInAnyOrder(Shown.Kind.values());
    }

    @Test
    void a_drill_comes_back_from_its_seed_and_answers() {
        Drill drill = new SimulatedReader(0.02, 9, 0.05, 0.05).through(DrillPlan.USUAL, 9);
        List<Boolean> answers = drill.answers().stream().map(Drill.Answer::seen).toList();
        Drill again = Drill.after(DrillPlan.USUAL, 9, answers);
        assertThat(again.answers()).isEqualTo(drill.answers());
        assertThat(again.result()).isEqualTo(drill.result());
    }

    @Test
    void counts_are_those_of_the_answers() {
        Drill drill = Drill.start(SHORT, 2);
        while (!drill.over()) {
            // calls each blank, misses each plain line, and sees every other
            drill = drill.answered(drill.next().orElseThrow().kind() != Shown.Kind.PLAIN);
        }
        DrillResult result = drill.result();
        assertThat(result.blanks()).isEqualTo(6);
        assertThat(result.alarms()).isEqualTo(6);
        assertThat(result.plain()).isEqualTo(3);
        assertThat(result.missed()).isEqualTo(3);
        assertThat(result.tallies().stream().mapToInt(DrillResult.Tally::shown).sum())
                .isEqualTo(15);
        assertThat(result.tallies()).allMatch(tally -> tally.seen() == tally.shown());
        assertThat(result.cautions())
                .contains(DrillResult.Caution.ALARMS, DrillResult.Caution.LAPSES, DrillResult.Caution.WIDE);
    }

    @Test
    void half_of_what_can_be_seen_is_seen_at_the_threshold() {
        DrillResult result = new SimulatedReader(0.02, 9, 0.05, 0.05)
                .through(DrillPlan.USUAL, 4)
                .result();
        double half = result.guess() + (1 - result.guess() - result.lapse()) / 2;
        assertThat(result.seen(result.threshold())).isCloseTo(half, org.assertj.core.data.Offset.offset(1e-12));
        assertThat(result.seen(0.1)).isGreaterThan(result.seen(0.01));
    }

    @Test
    void goes_towards_its_end() {
        Drill drill = Drill.start(SHORT, 2);
        assertThat(drill.done()).isZero();
        assertThat(drill.answered(true).done()).isPositive();
        assertThat(new SimulatedReader(0.01, 10, 0, 0).through(SHORT, 1).done()).isEqualTo(1);
    }

    @Test
    void plans_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> new DrillPlan(0, 1, 40, 96, 1.6)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new DrillPlan(2, 1, 40, 30, 1.6)).isInstanceOf(NoAnswer.class);
    }
}
