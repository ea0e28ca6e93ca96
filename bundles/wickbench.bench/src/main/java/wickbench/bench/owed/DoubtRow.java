package wickbench.bench.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Doubted;
import wickbench.reading.owed.Fact.Trusted;

/** What entries of any kind say of results in doubt, as rows that hold the two members as they stand. */
final class DoubtRow {
    static final String KIND = "doubt";

    private static final String INSERT =
            "INSERT INTO fact (id, kind, at, written, station, seq, said) VALUES (?, ?, ?, ?, ?, ?, ?)";

    private DoubtRow() {}

    static void take(Entry entry, Rows rows) {
        String source = entry.ref().toString();
        List<Doubt> doubts = Doubt.in(source, entry.body());
        Optional<Trust> trust = Trust.in(source, entry.body());
        if (!doubts.isEmpty() || trust.isPresent()) {
            Json.Obj said = Doubt.into(Json.object(), doubts);
            rows.write(
                    INSERT,
                    entry.id(),
                    KIND,
                    entry.at(),
                    entry.at(),
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    trust.map(each -> each.into(said)).orElse(said).canonical());
        }
    }

    static List<Fact> read(Row row, UUID id, Instant at) {
        String source = row.text("station") + ":" + row.whole("seq");
        Json.Obj said = JsonReader.readObject(source, row.text("said")).orRefuse();
        List<Fact> facts = new ArrayList<>();
        Doubt.in(source, said).forEach(doubt -> facts.add(new Doubted(id, at, doubt)));
        Trust.in(source, said).ifPresent(trust -> facts.add(new Trusted(id, trust.from(), trust.doubts())));
        return facts;
    }
}
