package wickbench.ledger.services;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;

/** The ledger's view over entries of other stations, which a journal carries inside its own in the order of their arrival. */
record Carried(LedgerView view) implements IndexView {
    static final String KIND = "entry.carried";

    /** Packs an entry of another station. */
    static Json.Obj pack(String ref, UUID id, Instant at, String kind, Json.Obj body) {
        return Json.object()
                .with("ref", ref)
                .with("id", id.toString())
                .with("at", at.toString())
                .with("kind", kind)
                .with("body", body);
    }

    @Override
    public String name() {
        return view.name();
    }

    @Override
    public int version() {
        return view.version();
    }

    @Override
    public List<String> tables() {
        return view.tables();
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(KIND, 1)) {
            view.apply(unpack(entry), rows);
        }
    }

    private static Entry unpack(Entry entry) {
        return new Entry(
                EntryRef.parse(text(entry, "ref")),
                UUID.fromString(text(entry, "id")),
                entry.prev(),
                Instant.parse(text(entry, "at")),
                entry.offset(),
                entry.by(),
                text(entry, "kind"),
                1,
                (Json.Obj) entry.body().get("body").orElseThrow(),
                entry.leaf());
    }

    private static String text(Entry entry, String name) {
        return ((Json.Text) entry.body().get(name).orElseThrow()).value();
    }
}
