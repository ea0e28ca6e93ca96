package wickbench.plant.book;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wickbench.api.clash.Settlement;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.plant.changeover.Disputes;

/**
 * Statements that were settled against another: a row for each that a settlement names.
 *
 * <p>The newest settlement counts first, and what one lets stand, an older one does not take away: so of two that had not seen one
 * another something always stands.
 */
final class Lost {
    static final List<String> TABLE =
            List.of("create table settled (by_station varchar(32) not null, by_seq bigint not null,"
                    + " at timestamp(3) with time zone not null, station varchar(32) not null, seq bigint not null,"
                    + " stands boolean not null, primary key (by_station, by_seq, station, seq))");

    private Lost() {}

    static void take(Entry entry, Rows rows) {
        Settlement.of(entry)
                .filter(settled -> settled.subject().startsWith(Disputes.PLANT))
                .ifPresent(settled -> settled.among().stream()
                        .distinct()
                        .forEach(each -> row(entry, each, each.equals(settled.stands()), rows)));
    }

    private static void row(Entry entry, EntryRef word, boolean stands, Rows rows) {
        rows.write(
                "insert into settled (by_station, by_seq, at, station, seq, stands) values (?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.at(),
                word.station().value(),
                word.seq(),
                stands);
    }

    /** A word that a settlement names. */
    private record Named(EntryRef by, EntryRef word, boolean stands) {
        static Named of(Row row) {
            return new Named(
                    new EntryRef(new StationId(row.text("by_station")), row.whole("by_seq")),
                    new EntryRef(new StationId(row.text("station")), row.whole("seq")),
                    row.flag("stands"));
        }
    }

    static Set<EntryRef> of(Rows rows) {
        Set<EntryRef> kept = new HashSet<>();
        Set<EntryRef> lost = new HashSet<>();
        // of one settlement what stands comes first
        rows.read(
                        "select by_station, by_seq, station, seq, stands from settled"
                                + " order by at desc, by_station desc, by_seq desc, stands desc, station, seq",
                        Named::of)
                .forEach(named -> {
                    if (lost.contains(named.by())) {
                        return;
                    }
                    if (named.stands()) {
                        kept.add(named.word());
                    } else if (!kept.contains(named.word())) {
                        lost.add(named.word());
                    }
                });
        lost.removeAll(kept);
        return lost;
    }
}
