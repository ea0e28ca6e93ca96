package wickbench.index;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;

/** How far each view is, kept in the same file so that it changes in the same transaction as the view's tables. */
final class Marks {
    private static final List<String> TABLES = List.of(
            "create schema if not exists house",
            "create table if not exists house.known_view (name varchar(63) primary key, version integer not null)",
            "create table if not exists house.mark (name varchar(63) not null, station varchar(32) not null,"
                    + " taken bigint not null, leaf varchar(64) not null, primary key (name, station))");

    private final Session session;
    private final IndexView view;

    Marks(Session session, IndexView view) {
        this.session = session;
        this.view = view;
    }

    /**
     * One view's place in one station's journal.
     *
     * @param taken entries taken in
     * @param leaf of the last of them
     */
    record Mark(long taken, Hash leaf) {}

    static void make(Session session) {
        TABLES.forEach(session::run);
        Told.TABLES.forEach(session::run);
        session.commit();
    }

    /** Tells whether the tables of this version are there, whole. */
    boolean current() {
        return session.first(
                        "select version from house.known_view where name = ?", row -> row.whole("version"), view.name())
                .equals(Optional.of((long) view.version()));
    }

    Map<StationId, Mark> read() {
        Map<StationId, Mark> marks = new TreeMap<>();
        session.read(
                        "select station, taken, leaf from house.mark where name = ?",
                        row -> Map.entry(
                                new StationId(row.text("station")),
                                new Mark(row.whole("taken"), new Hash(row.text("leaf")))),
                        view.name())
                .forEach(mark -> marks.put(mark.getKey(), mark.getValue()));
        return marks;
    }

    void forget() {
        session.write("delete from house.known_view where name = ?", view.name());
        session.write("delete from house.mark where name = ?", view.name());
    }

    void made() {
        session.write("insert into house.known_view (name, version) values (?, ?)", view.name(), view.version());
    }

    Mark move(Entry last) {
        Mark mark = new Mark(last.ref().seq() + 1, last.leaf());
        String station = last.ref().station().value();
        int known = session.write(
                "update house.mark set taken = ?, leaf = ? where name = ? and station = ?",
                mark.taken(),
                mark.leaf().hex(),
                view.name(),
                station);
        if (known == 0) {
            session.write(
                    "insert into house.mark (taken, leaf, name, station) values (?, ?, ?, ?)",
                    mark.taken(),
                    mark.leaf().hex(),
                    view.name(),
                    station);
        }
        return mark;
    }
}
