package wickbench.bench.owed;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.profile.ControlRule;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Ran;
import wickbench.reading.owed.Fact.RanStrip;
import wickbench.reading.owed.Fact.Ruled;

/** Which run controls a site asks for, and which strips made a run, as rows that hold the member that says so. */
final class SiteRow {
    static final String RULE = "profile.issued";
    static final String RUN = "run.recorded";

    private static final String INSERT =
            "INSERT INTO fact (id, kind, at, written, station, seq, said) VALUES (?, ?, ?, ?, ?, ?, ?)";

    private SiteRow() {}

    static void take(Entry entry, Rows rows) {
        if (entry.is(RULE, 1)) {
            Json.Obj profile = (Json.Obj) entry.body().get("profile").orElseThrow();
            Json.Obj said = Json.object().with("zone", profile.get("zone").orElseThrow());
            insert(
                    entry,
                    profile.get(ControlRule.MEMBER)
                            .map(rule -> said.with(ControlRule.MEMBER, rule))
                            .orElse(said),
                    rows);
        } else if (entry.is(RUN, 1)) {
            insert(
                    entry,
                    Json.object().with("strips", entry.body().get("strips").orElseThrow()),
                    rows);
        }
    }

    private static void insert(Entry entry, Json.Obj said, Rows rows) {
        rows.write(
                INSERT,
                entry.id(),
                entry.kind(),
                entry.at(),
                entry.at(),
                entry.ref().station().value(),
                entry.ref().seq(),
                said.canonical());
    }

    static Fact rule(Row row, UUID id, Instant at) {
        Fields said = said(row);
        return new Ruled(
                id,
                at,
                ZoneId.of(said.text("zone")),
                said.optionalChild(ControlRule.MEMBER).map(ControlRule::in).orElse(ControlRule.NONE));
    }

    static Fact run(Row row, UUID id, Instant at) {
        List<RanStrip> strips = said(row).children("strips").stream()
                .flatMap(strip -> strip(strip).stream())
                .toList();
        return new Ran(id, at, strips);
    }

    private static Optional<RanStrip> strip(Fields strip) {
        Optional<Instant> cleaned = strip.optionalChild("clean").flatMap(clean -> clean.optionalInstant("ended"));
        return strip.optional("reading", UUID::fromString).map(reading -> new RanStrip(reading, cleaned));
    }

    private static Fields said(Row row) {
        String source = row.text("station") + ":" + row.whole("seq");
        return Fields.of(source, JsonReader.readObject(source, row.text("said")).orRefuse());
    }
}
