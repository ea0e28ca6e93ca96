package wickbench.plant.book;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.index.Row;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.JsonReader;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.programme.Maintained;

/**
 * What an entry says.
 *
 * @param written when the entry was
 * @param what the body as the record that it is
 */
record Told(EntryRef entry, Instant written, Object what) {
    /** By when it was done; of what was done at once, by when it was written. The order in which entries came never matters. */
    static final Comparator<Told> IN_ORDER = Comparator.comparing(Told::acted)
            .thenComparing(Told::written)
            .thenComparing(told -> told.entry().station())
            .thenComparing(told -> told.entry().seq());

    /** Empty for a body that this program cannot read: a file of another hand, which the journal keeps all the same. */
    static Optional<Told> of(Row row) {
        EntryRef entry = new EntryRef(new StationId(row.text("station")), row.whole("seq"));
        Checked<?> read = Kinds.read(
                row.text("kind"),
                Fields.of(
                        entry.toString(),
                        JsonReader.readObject(entry.toString(), row.text("body"))
                                .orRefuse()));
        return read instanceof Checked.Good<?> good
                ? Optional.of(new Told(entry, row.instant("at"), good.value()))
                : Optional.empty();
    }

    Instant acted() {
        if (what instanceof ChangeMade change) {
            return change.at();
        }
        if (what instanceof Maintained done) {
            return done.at();
        }
        return what instanceof SeriesRun run ? run.at() : written;
    }
}
