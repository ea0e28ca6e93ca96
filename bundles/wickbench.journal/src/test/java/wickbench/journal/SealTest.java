package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Checked;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.proof.OpenKey;

/** A line of the list of checkpoints is one only when all its parts agree. */
class SealTest {
    private static final String OTHER = "0".repeat(64);

    @TempDir
    Path folder;

    private String line;
    private Json.Obj seal;

    @BeforeEach
    void seal_a_journal() throws IOException {
        Recorded.closed(folder, 6);
        line = Files.readAllLines(Recorded.files(folder).checkpoints()).get(0);
        seal = JsonReader.readObject("seal", line) instanceof Checked.Good<Json.Obj> good
                ? good.value()
                : Json.object();
    }

    @Test
    void what_was_written_is_read_back() {
        assertThat(Seal.parse(line)).map(Seal::line).contains(line);
        assertThat(Seal.parse(line).orElseThrow().size()).isEqualTo(7);
        assertThat(Seal.parse(line).orElseThrow().startingPoint().size()).isEqualTo(7);
    }

    @Test
    void a_part_that_is_missing_of_another_kind_or_does_not_agree_makes_it_none() {
        Seal good = Seal.parse(line).orElseThrow();
        List<Json> peaks = good.frontier().stream()
                .<Json>map(peak -> new Json.Text(peak.hex()))
                .toList();
        Stream.of(
                        Json.object(),
                        without("size"),
                        without("root"),
                        without("note"),
                        without("offset"),
                        without("frontier"),
                        seal.with("root", "no hash"),
                        seal.with("root", OTHER),
                        seal.with("size", 6),
                        seal.with("size", -1),
                        seal.with("note", "no note"),
                        seal.with("note", good.note().replace("\n7\n", "\n6\n")),
                        seal.with("frontier", Json.array(List.of())),
                        seal.with("frontier", Json.array(peaks.subList(0, 2))),
                        seal.with("frontier", Json.array(List.of(peaks.get(1), peaks.get(0), peaks.get(2)))),
                        seal.with(
                                "frontier", Json.array(List.of(new Json.Text("no hash"), peaks.get(1), peaks.get(2)))),
                        seal.with("more", 1))
                .map(Json::canonical)
                .forEach(other -> assertThat(Seal.parse(other)).as(other).isEmpty());
    }

    @Test
    void a_line_that_is_not_canonical_or_no_object_is_none() {
        assertThat(Seal.parse(line.replace(",\"offset\"", ", \"offset\""))).isEmpty();
        assertThat(Seal.parse("[]")).isEmpty();
        assertThat(Seal.parse("")).isEmpty();
    }

    @Test
    void a_note_with_another_root_does_not_agree() throws IOException {
        Path other = folder.resolve("other");
        Recorded.closed(other, 6);
        Seal foreign = Seal.parse(
                        Files.readAllLines(Recorded.files(other).checkpoints()).get(0))
                .orElseThrow();
        assertThat(Seal.parse(seal.with("note", foreign.note()).canonical())).isEmpty();
        Seal good = Seal.parse(line).orElseThrow();
        OpenKey key = Founded.read(Recorded.entries(folder).get(0)).orRefuse().key();
        assertThat(good.holds(key, Recorded.STATION)).isTrue();
        assertThat(foreign.holds(key, Recorded.STATION)).isFalse();
        assertThat(good.holds(key, new StationId("station-2"))).isFalse();
    }

    private Json.Obj without(String member) {
        Json.Obj less = Json.object();
        for (String name : List.of("size", "root", "note", "offset", "frontier")) {
            less = name.equals(member) ? less : less.with(name, seal.get(name).orElseThrow());
        }
        return less;
    }
}
