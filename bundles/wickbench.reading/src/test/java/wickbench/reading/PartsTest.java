package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

class PartsTest {
    /** From the year 0000 to the last millisecond of 9999, the years of four digits. */
    @Property
    void timesReadBackAsTheyWereWritten(
            @ForAll @LongRange(min = -62_167_219_200_000L, max = 253_402_300_799_999L) long at) {
        Json.Obj object = Json.object().with("at", Parts.json(Instant.ofEpochMilli(at)));
        assertThat(Parts.instant(Fields.of("x", object), "at")).contains(Instant.ofEpochMilli(at));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-03-01T24:00:00.000Z", "2016-12-31T23:59:60.000Z", "2024-02-29T00:00:00.001Z"})
    void theRarerTimesAreReadAsTheStandardLibraryDoes(String text) {
        assertThat(read(text)).contains(Instant.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-02-29T00:00:00.000Z",
                "2026-13-01T00:00:00.000Z",
                "2026-03-01T25:00:00.000Z",
                "2026-03-01T24:00:00.001Z",
                "2026-03-01T08:61:00.000Z",
                "2026-03-01T08:00:61.000Z",
                "2026-03-01T08:00:00Z",
                "2026-03-01 08:00:00.000Z"
            })
    void whatIsNoTimeIsComplainedOf(String text) {
        Fields fields = Fields.of("x", Json.object().with("at", text));
        assertThat(Parts.instant(fields, "at")).isEmpty();
        assertThat(fields.clean()).isFalse();
    }

    private static Optional<Instant> read(String text) {
        return Parts.instant(Fields.of("x", Json.object().with("at", text)), "at");
    }
}
