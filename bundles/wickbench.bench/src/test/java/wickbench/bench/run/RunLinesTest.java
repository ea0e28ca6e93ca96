package wickbench.bench.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.json.Json;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.testing.Schemas;

/** Whatever happens in a run is written as its schema says, and reads back as it was. */
class RunLinesTest {
    private static final PersonId ANA = new PersonId("ana");
    private static final Moment AT =
            new Moment(Instant.parse("2026-03-02T06:00:00.123Z"), "boot-1", Duration.ofMillis(12_340));

    static Stream<RunEvent> events() {
        RunStrip plain = TestStrips.strip(1, Optional.empty());
        RunStrip cleaned = new RunStrip(
                2,
                plain.unread(),
                Duration.ZERO,
                Duration.ofSeconds(9),
                Optional.of(new Clean(
                        Optional.of("wet clean 4"),
                        Optional.empty(),
                        Optional.of(Instant.parse("2026-03-02T05:00:00Z")))),
                true);
        return Stream.of(
                new RunEvent.Begun(new UUID(7, 9), ANA, List.of(plain, cleaned)),
                new RunEvent.Added(cleaned),
                new RunEvent.Shaking(1),
                new RunEvent.Shaken(1),
                new RunEvent.Started(1),
                new RunEvent.Undone(1),
                new RunEvent.Looked(1),
                new RunEvent.Kept(1, ANA, TestStrips.lines(Seen.SEEN, Seen.DAMAGED, Seen.FAINT)),
                new RunEvent.Second(1, ANA, TestStrips.lines(Seen.SEEN, Seen.NOT_SEEN, Seen.FAINT)),
                new RunEvent.NoSecond(1),
                new RunEvent.Lost(3),
                new RunEvent.Skipped(4),
                new RunEvent.Recorded(1, new UUID(1, 2)),
                new RunEvent.ClockMoved(Duration.ofHours(-1)),
                new RunEvent.Resumed(),
                new RunEvent.Closed());
    }

    @ParameterizedTest
    @MethodSource("events")
    void every_event_is_written_as_its_schema_says_and_reads_back(RunEvent event) throws IOException {
        Json.Obj line = RunJson.write(new Noted(AT, event));

        assertThat(Schemas.published().errors("run-line-1.schema.json", line.canonical()))
                .isEmpty();
        assertThat(RunReader.read("line", line).orRefuse()).isEqualTo(new Noted(AT, event));
    }

    @Test
    void a_line_of_something_unknown_is_not_guessed() throws IOException {
        Json.Obj line = RunJson.write(new Noted(AT, new RunEvent.Started(1))).with("what", "boiled");

        assertThat(RunReader.read("line", line).complaints()).isNotEmpty();
        assertThat(Schemas.published().errors("run-line-1.schema.json", line.canonical()))
                .isNotEmpty();
    }
}
