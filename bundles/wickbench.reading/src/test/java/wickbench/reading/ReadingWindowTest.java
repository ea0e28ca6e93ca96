package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.Format;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Times;
import wickbench.api.reading.Verdict;

class ReadingWindowTest {
    /** Common practice, no source: develop 5 min, read within the next 1 min; both ends stand. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    -5000,  time.read-early, -5 s,      at least 300 s
                    0,      time.read-early, 0 s,       at least 300 s
                    299000, time.read-early, 299 s,     at least 300 s
                    299999, time.read-early, 299.999 s, at least 300 s
                    300000,,,
                    330000,,,
                    360000,,,
                    360001, time.read-late,  360.001 s, at most 360 s
                    361000, time.read-late,  361 s,     at most 360 s
                    86400000, time.read-late, 86400 s,  at most 360 s
                    """)
    void standsInsideTheWindowOnly(long millis, String rule, String measured, String asked) {
        for (Format format : Format.values()) {
            Verdict verdict = judge(format, times(millis));
            if (rule == null) {
                assertThat(verdict.outcome()).isEqualTo(Outcome.NEGATIVE);
            } else {
                assertThat(verdict.outcome()).isEqualTo(Outcome.INVALID);
                assertThat(verdict.findings()).containsExactly(new Finding(rule, Severity.VOIDS, measured, asked));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void needsStartAndReading(Format format) {
        Times times = times(330_000);
        assertThat(judge(format, with(times, Optional.empty(), times.read())).findings())
                .contains(new Finding("time.not-stated", Severity.VOIDS, "started not stated", "started, read"));
        assertThat(judge(format, with(times, times.started(), Optional.empty())).findings())
                .containsExactly(new Finding("time.not-stated", Severity.VOIDS, "read not stated", "started, read"));
        Verdict neither = judge(format, with(times, Optional.empty(), Optional.empty()));
        assertThat(neither.outcome()).isEqualTo(Outcome.INVALID);
        assertThat(neither.findings())
                .contains(new Finding("time.not-stated", Severity.VOIDS, "started, read not stated", "started, read"));
    }

    @Test
    void countsMillisecondsBecauseThatIsWhatAnEntryKeeps() {
        Instant readWithNanos = Fixtures.START.plusSeconds(360).plusNanos(400_000);
        Times times = with(times(0), Optional.of(Fixtures.START), Optional.of(readWithNanos));
        assertThat(judge(Format.SANDWICH_HOOK, times).outcome()).isEqualTo(Outcome.NEGATIVE);
    }

    private static Verdict judge(Format format, Times times) {
        return withoutHookCaution(Judgement.judge(
                Fixtures.method(format),
                Fixtures.reading(Fixtures.sample(), times, Fixtures.negative(format)),
                Surroundings.none()));
    }

    private static Verdict withoutHookCaution(Verdict verdict) {
        return new Verdict(
                verdict.outcome(),
                verdict.sign(),
                verdict.findings().stream()
                        .filter(finding -> !finding.rule().equals("format.no-hook-line"))
                        .toList(),
                verdict.level(),
                verdict.owed(),
                verdict.method());
    }

    private static Times times(long millis) {
        Times plain = Fixtures.times();
        return with(plain, plain.started(), Optional.of(Fixtures.START.plus(Duration.ofMillis(millis))));
    }

    private static Times with(Times times, Optional<Instant> started, Optional<Instant> read) {
        return new Times(times.outOfFridge(), times.extracted(), times.shaken(), started, read);
    }
}
