package wickbench.index;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.IndexView;
import wickbench.api.index.Row;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;

/**
 * Which entries a view has taken on each of its subjects, kept once a second station is known: what a late entry needs to find its
 * place. Changes in the same transaction as the view's tables.
 */
final class Told {
    static final List<String> TABLES = List.of(
            "create table if not exists house.several (name varchar(63) primary key)",
            "create table if not exists house.told (name varchar(63) not null, subject varchar not null,"
                    + " at timestamp(3) with time zone not null, station varchar(32) not null, seq bigint not null,"
                    + " primary key (name, subject, at, station, seq))",
            "create table if not exists house.named (name varchar(63) not null, id uuid not null, subject varchar not null,"
                    + " primary key (name, id, subject))",
            "create table if not exists house.decided (name varchar(63) not null, subject varchar not null,"
                    + " station varchar(32) not null, seq bigint not null, claim varchar not null,"
                    + " primary key (name, subject, station, seq))");

    private static final List<String> ALL = List.of("several", "told", "named", "decided");

    private final Session session;
    private final IndexView view;

    Told(Session session, IndexView view) {
        this.session = session;
        this.view = view;
    }

    /** Tells whether the rows of every entry taken so far are here. */
    boolean kept() {
        return session.first("select name from house.several where name = ?", row -> true, view.name())
                .isPresent();
    }

    void forget() {
        ALL.forEach(table -> session.write("delete from house." + table + " where name = ?", view.name()));
    }

    /** Says that every entry taken so far has been added. */
    void complete() {
        session.write("insert into house.several (name) values (?)", view.name());
    }

    void add(Entry entry, Set<String> subjects) {
        for (String subject : subjects) {
            session.write(
                    "insert into house.told (name, subject, at, station, seq) values (?, ?, ?, ?, ?)",
                    view.name(),
                    subject,
                    entry.at(),
                    entry.ref().station().value(),
                    entry.ref().seq());
            view.names(entry).forEach(id -> name(id, subject));
        }
        view.decision(entry)
                .ifPresent(decision -> session.write(
                        "insert into house.decided (name, subject, station, seq, claim) values (?, ?, ?, ?, ?)",
                        view.name(),
                        decision.subject(),
                        entry.ref().station().value(),
                        entry.ref().seq(),
                        decision.claim()));
    }

    private void name(UUID id, String subject) {
        boolean known = session.first(
                        "select id from house.named where name = ? and id = ? and subject = ?",
                        row -> true,
                        view.name(),
                        id,
                        subject)
                .isPresent();
        if (!known) {
            session.write("insert into house.named (name, id, subject) values (?, ?, ?)", view.name(), id, subject);
        }
    }

    /** Tells whether an entry not yet added belongs behind all that were added on a subject. */
    boolean last(Entry entry, String subject) {
        return newest(subject).filter(at -> at.isAfter(entry)).isEmpty() && !named(entry.id(), subject);
    }

    private boolean named(UUID id, String subject) {
        return session.first(
                        "select id from house.named where name = ? and id = ? and subject = ?",
                        row -> true,
                        view.name(),
                        id,
                        subject)
                .isPresent();
    }

    private record Place(Instant at, EntryRef ref) {
        static Place of(Row row) {
            return new Place(row.instant("at"), Told.ref(row));
        }

        boolean isAfter(Entry entry) {
            int byTime = at.compareTo(entry.at());
            int byStation = ref.station().compareTo(entry.ref().station());
            return byTime > 0 || byTime == 0 && byStation > 0;
        }
    }

    private Optional<Place> newest(String subject) {
        return session.first(
                "select at, station, seq from house.told where name = ? and subject = ?"
                        + " order by name desc, subject desc, at desc, station desc, seq desc fetch first row only",
                Place::of,
                view.name(),
                subject);
    }

    List<EntryRef> entries(String subject) {
        return session.read(
                "select station, seq from house.told where name = ? and subject = ?", Told::ref, view.name(), subject);
    }

    private static EntryRef ref(Row row) {
        return new EntryRef(new StationId(row.text("station")), row.whole("seq"));
    }
}
