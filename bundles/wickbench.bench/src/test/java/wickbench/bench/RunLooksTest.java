package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.TestStrips;
import wickbench.testing.Meets;

/** What waits for a control of its run, and what a second reader looks at. */
class RunLooksTest extends RunCase {
    @Test
    @Meets("ISO 22000 8.7")
    void a_negative_waits_for_the_control_of_its_kit_and_falls_with_it() {
        begin(TestStrips.strip(1, Optional.of(RunControl.LOW_POSITIVE)), strip(2), strip(3));
        for (int strip = 1; strip <= 3; strip++) {
            happened(new RunEvent.Started(strip));
        }
        time.seconds(310);
        read(2, NEGATIVE);
        read(3, POSITIVE);
        assertThat(recorded()).extracting(one -> one.verdict().outcome()).containsExactly(Outcome.POSITIVE);

        read(1, NEGATIVE);

        assertThat(recorded())
                .filteredOn(one -> one.reading().sample().code().equals("S2"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.verdict().outcome()).isEqualTo(Outcome.INVALID);
                    assertThat(one.verdict().findings())
                            .extracting(Finding::rule)
                            .contains("control.failed");
                });
    }

    @Test
    @Meets("EU GMP Annex 11 6")
    void a_faint_line_asks_for_another_reader_who_makes_it_no_less_positive() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, FAINT);
        assertThat(phase(1)).isEqualTo(Phase.SECOND);
        assertThat(recorded()).isEmpty();
        refused(() -> happened(new RunEvent.Second(1, ANA, NEGATIVE)));

        happened(new RunEvent.Second(1, BEN, NEGATIVE));

        RecordedReading kept = recorded().get(0);
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(kept.verdict().findings()).extracting(Finding::rule).contains("reader.disagreement");
        assertThat(kept.reading().second().orElseThrow().reader()).isEqualTo(BEN);
    }

    @Test
    void when_nobody_comes_for_a_second_look_the_first_stands_and_the_run_says_so() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, FAINT);
        happened(new RunEvent.NoSecond(1));
        run.close().join();

        assertThat(recorded()).hasSize(1);
        assertThat(lastBody()).contains("\"second\":\"nobody-came\"");
    }

    @Test
    void a_strip_drawn_beforehand_asks_for_a_second_look_only_when_it_looks_negative() {
        begin(
                TestStrips.timed(1, Optional.empty(), Duration.ofMinutes(5), Duration.ofMinutes(1), true),
                TestStrips.timed(2, Optional.empty(), Duration.ofMinutes(5), Duration.ofMinutes(1), true));
        happened(new RunEvent.Started(1));
        happened(new RunEvent.Started(2));
        time.seconds(310);
        read(1, NEGATIVE);
        read(2, POSITIVE);

        assertThat(phase(1)).isEqualTo(Phase.SECOND);
        assertThat(phase(2)).isEqualTo(Phase.RECORDED);
    }
}
