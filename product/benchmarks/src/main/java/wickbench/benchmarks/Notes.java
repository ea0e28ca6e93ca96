package wickbench.benchmarks;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.random.RandomGenerator;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** A plain kind of entry, about 300 bytes a line, and a view that keeps one row of it. */
final class Notes implements IndexView {
    private static final PersonId WHO = new PersonId("op-01");
    private static final String KIND = "note.written";

    static Draft draft(RandomGenerator chance, int number) {
        Json.Obj body =
                Json.object().with("number", number).with("text", "rinse water of line 4, filler nozzle, clear");
        return new Draft(Draft.randomId(chance), WHO, KIND, 1, body);
    }

    @Override
    public String name() {
        return "notes";
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        return List.of("create table note (station varchar(32) not null, seq bigint not null, id uuid not null,"
                + " number bigint not null, text varchar(255) not null, primary key (station, seq))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(KIND, 1)) {
            Json.Num number = (Json.Num) entry.body().get("number").orElseThrow();
            Json.Text text = (Json.Text) entry.body().get("text").orElseThrow();
            UUID id = entry.id();
            rows.write(
                    "insert into note (station, seq, id, number, text) values (?, ?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    id,
                    number.value().longValueExact(),
                    text.value());
        }
    }
}
