package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.method.Format;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;
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
        for (Format format : new Format[] {Format.SANDWICH_HOOK, Format.COMPETITIVE}) {
            Verdict verdict = new Given(format)
                    .with(g -> g.read = Optional.of(Given.START.plusMillis(millis)))
                    .judge();
            if (rule == null) {
                assertThat(verdict.outcome()).isEqualTo(Outcome.NEGATIVE);
                assertThat(verdict.findings()).isEmpty();
            } else {
                assertThat(verdict.outcome()).isEqualTo(Outcome.INVALID);
                assertThat(verdict.findings()).containsExactly(new Finding(rule, Severity.VOIDS, measured, asked));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void needsStartAndReading(Format format) {
        assertThat(notStated(new Given(format).with(g -> g.started = Optional.empty())))
                .isEqualTo("started not stated");
        assertThat(notStated(new Given(format).with(g -> g.read = Optional.empty())))
                .isEqualTo("read not stated");
        assertThat(notStated(new Given(format)
                        .with(g -> g.started = Optional.empty())
                        .with(g -> g.read = Optional.empty())))
                .isEqualTo("started, read not stated");
    }

    private static String notStated(Given given) {
        Verdict verdict = given.judge();
        assertThat(verdict.outcome()).isEqualTo(Outcome.INVALID);
        Finding finding = verdict.findings().get(0);
        assertThat(finding)
                .isEqualTo(new Finding("time.not-stated", Severity.VOIDS, finding.measured(), "started, read"));
        return finding.measured();
    }

    @Test
    void countsWholeMillisecondsBecauseThatIsWhatAnEntryKeeps() {
        Given given = new Given(Format.SANDWICH_HOOK)
                .with(g -> g.read = Optional.of(Given.START.plusSeconds(360).plusNanos(400_000)));
        assertThat(given.judge().outcome()).isEqualTo(Outcome.NEGATIVE);
    }
}
