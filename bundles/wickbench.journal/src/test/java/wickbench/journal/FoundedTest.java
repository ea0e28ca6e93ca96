package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;

/** The first entry founds a station only when it names station, zone, key and clock, and contradicts nothing. */
class FoundedTest {
    @TempDir
    Path folder;

    private Entry first;

    @BeforeEach
    void found() {
        Recorded.closed(folder, 1);
        first = Recorded.entries(folder).get(0);
    }

    @Test
    void what_was_recorded_is_read_back() {
        assertThat(Founded.read(first)).isInstanceOf(Checked.Good.class);
        assertThat(Founded.read(first).orRefuse().body()).isEqualTo(first.body());
    }

    @Test
    void what_is_missing_or_contradicts_makes_it_no_first_entry() {
        Json.Obj body = first.body();
        Stream.of(
                        without("station"),
                        without("zone"),
                        without("public_key"),
                        without("key_fingerprint"),
                        without("clock"),
                        without("format"),
                        body.with("station", "station-2"),
                        body.with("station", "NO STATION"),
                        body.with("zone", "Nowhere/Town"),
                        body.with("public_key", "no key"),
                        body.with("key_fingerprint", "0".repeat(64)),
                        body.with("key_fingerprint", "no hash"),
                        body.with("clock", "simulated"),
                        body.with("clock", "sundial"),
                        body.with("seed", "7"),
                        body.with("seed", "seven"),
                        body.with("format", 2))
                .forEach(other -> assertThat(Founded.read(entry(first.kind(), 1, 0, other)))
                        .as(other.canonical())
                        .isInstanceOf(Checked.Bad.class));
    }

    @Test
    void a_simulated_clock_comes_with_its_seed() {
        Json.Obj simulated = first.body().with("clock", "simulated").with("seed", "7");
        Founded founded = Founded.read(entry(first.kind(), 1, 0, simulated)).orRefuse();
        assertThat(founded.founding().simulatedSeed()).hasValue(7);
        assertThat(founded.body()).isEqualTo(simulated);
    }

    @Test
    void another_kind_version_place_or_station_founds_nothing() {
        assertThat(Founded.read(entry("note.written", 1, 0, first.body()))).isInstanceOf(Checked.Bad.class);
        assertThat(Founded.read(entry(first.kind(), 2, 0, first.body()))).isInstanceOf(Checked.Bad.class);
        assertThat(Founded.read(entry(first.kind(), 1, 1, first.body()))).isInstanceOf(Checked.Bad.class);
    }

    private Json.Obj without(String member) {
        Json.Obj less = Json.object();
        for (String name : List.of("station", "zone", "public_key", "key_fingerprint", "clock", "format")) {
            less = name.equals(member)
                    ? less
                    : less.with(name, first.body().get(name).orElseThrow());
        }
        return less;
    }

    private Entry entry(String kind, int v, long seq, Json.Obj body) {
        return new Entry(
                new EntryRef(new StationId("station-1"), seq),
                first.id(),
                first.prev(),
                first.at(),
                first.offset(),
                first.by(),
                kind,
                v,
                body,
                first.leaf());
    }
}
