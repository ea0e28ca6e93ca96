package wickbench.index;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.clash.Clash;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Seen;
import wickbench.api.journal.Sighting;
import wickbench.api.journal.StationId;

/** What each station had seen of the others when it recorded, and so which decisions stand against one another. */
final class Sight {
    static final String TABLE =
            "create table seen (station varchar(32) not null, other varchar(32) not null, seq bigint not null,"
                    + " size bigint not null, primary key (station, other, seq))";

    private Sight() {}

    static void take(Entry entry, Rows rows) {
        Seen.of(entry)
                .forEach(seen -> rows.write(
                        "insert into seen (station, other, seq, size) values (?, ?, ?, ?)",
                        entry.ref().station().value(),
                        seen.station().value(),
                        entry.ref().seq(),
                        seen.size()));
    }

    static List<Sighting> sightings(Rows rows) {
        return rows.read(
                "select station, other, max(size) as most from seen group by station, other order by station, other",
                row -> new Sighting(
                        new StationId(row.text("station")), new StationId(row.text("other")), row.whole("most")));
    }

    private record Decided(EntryRef ref, String claim) {
        static Decided of(Row row) {
            return new Decided(new EntryRef(new StationId(row.text("station")), row.whole("seq")), row.text("claim"));
        }
    }

    static List<Clash> clashes(Rows rows) {
        return rows
                .read(
                        "select subject from house.decided group by subject"
                                + " having count(distinct station) > 1 and count(distinct claim) > 1 order by subject",
                        row -> row.text("subject"))
                .stream()
                .flatMap(subject -> clash(subject, rows).stream())
                .toList();
    }

    static Optional<Clash> clash(String subject, Rows rows) {
        List<Decided> newest = newest(subject, rows);
        List<Decided> open = newest.stream()
                .filter(each -> newest.stream().noneMatch(other -> saw(other.ref(), each.ref(), rows)))
                .toList();
        long claims = open.stream().map(Decided::claim).distinct().count();
        return claims > 1
                ? Optional.of(new Clash(subject, open.stream().map(Decided::ref).toList()))
                : Optional.empty();
    }

    /** Returns each station's newest decision, which has seen all that the station decided before. */
    private static List<Decided> newest(String subject, Rows rows) {
        Map<StationId, Decided> newest = new HashMap<>();
        rows.read(
                        "select distinct station, seq, claim from house.decided where subject = ? order by station, seq",
                        Decided::of,
                        subject)
                .forEach(each -> newest.put(each.ref().station(), each));
        return newest.values().stream()
                .sorted(Comparator.comparing((Decided each) -> each.ref().station()))
                .toList();
    }

    /** Tells whether a station had seen an entry of another when it recorded one of its own. */
    private static boolean saw(EntryRef own, EntryRef other, Rows rows) {
        return !own.station().equals(other.station())
                && rows.first(
                                "select seq from seen where station = ? and other = ? and seq < ? and size > ?",
                                row -> true,
                                own.station().value(),
                                other.station().value(),
                                own.seq(),
                                other.seq())
                        .isPresent();
    }
}
