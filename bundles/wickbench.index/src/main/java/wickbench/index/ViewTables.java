package wickbench.index;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import wickbench.api.check.Refusal;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.words.Words;
import wickbench.index.Marks.Mark;
import wickbench.index.SqlFailure.Damaged;

/**
 * One view's tables in the file.
 *
 * <p>Taking in is for one thread at a time; reading is for any number, each with a session of its own.
 */
final class ViewTables implements AutoCloseable {
    private static final Words WORDS = Words.of(ViewTables.class, "index");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z_]{0,62}");
    private static final int IDLE_READERS = 4;

    private final H2File file;
    private final IndexView view;
    private final String schema;
    private final Session writer;
    private final Marks store;
    private final Told told;
    private final Journal journal;
    private final Map<StationId, Mark> marks = new TreeMap<>();
    private final ConcurrentLinkedDeque<Session> idle = new ConcurrentLinkedDeque<>();
    private Optional<String> failure = Optional.empty();
    /** Entries of several stations are taken, so what was told on each subject is kept. */
    private boolean several;

    private volatile boolean closed;

    ViewTables(H2File file, IndexView view, Journal journal) {
        if (!NAME.matcher(view.name()).matches()) {
            throw new IllegalStateException("a view is named with lower-case letters and underscores: " + view.name());
        }
        this.file = file;
        this.view = view;
        this.journal = journal;
        schema = '"' + view.name() + '"';
        writer = file.session("house", true);
        store = new Marks(writer, view);
        told = new Told(writer, view);
        attempt("tables", this::open);
    }

    IndexView view() {
        return view;
    }

    Map<StationId, Mark> marks() {
        return marks;
    }

    long taken(StationId station) {
        return marks.containsKey(station) ? marks.get(station).taken() : 0;
    }

    long taken() {
        return marks.values().stream().mapToLong(Mark::taken).sum();
    }

    Optional<String> failure() {
        return failure;
    }

    /** Lets a view that failed try again. */
    void forgive() {
        if (failure.isPresent() && !store.current()) {
            attempt("tables", this::open);
        } else {
            failure = Optional.empty();
        }
    }

    /** Takes entries of one station in one transaction; when one fails, none of them is taken. */
    void take(List<Entry> entries) {
        Entry[] at = {entries.get(0)};
        attempt(() -> at[0].ref().toString(), () -> {
            Folding folding = new Folding(view, told, journal, writer);
            for (Entry entry : entries) {
                at[0] = entry;
                if (several) {
                    folding.take(entry);
                } else {
                    view.apply(entry, writer);
                }
            }
            folding.finish();
            Mark mark = store.move(at[0]);
            writer.commit();
            marks.put(at[0].ref().station(), mark);
        });
    }

    /** Tells whether the view is ready for entries of several stations. */
    boolean several() {
        return several;
    }

    /** Begins to keep what was told on each subject, from nothing. */
    void beginTelling() {
        attempt("subjects", () -> {
            told.forget();
            writer.commit();
        });
    }

    /** Keeps what entries already taken have told. */
    void tell(List<Entry> entries) {
        attempt("subjects", () -> {
            for (Entry entry : entries) {
                told.add(entry, view.subjects(entry));
            }
            writer.commit();
        });
    }

    void endTelling() {
        attempt("subjects", () -> {
            told.complete();
            writer.commit();
            several = true;
        });
    }

    /** Reads within one transaction, so that several questions are answered as of one moment. */
    <T> T read(Function<Rows, T> work) {
        Session session = Optional.ofNullable(idle.poll()).orElseGet(() -> file.session(schema, false));
        try {
            T answer = work.apply(session);
            file.refuseForeign();
            return answer;
        } finally {
            keep(session);
        }
    }

    /** Hands over a session that reads the tables of this view. */
    <T> T look(Function<Session, T> work) {
        try (Session session = file.session(schema, false)) {
            return work.apply(session);
        }
    }

    /** Refuses when the view could not take in all that there is: an answer must not leave out what was recorded. */
    void refuseIfBehind(long of) {
        failure.ifPresent(why -> {
            throw new Refusal("index.behind", WORDS.get("index.behind", view.name(), taken(), of, why));
        });
    }

    @Override
    public void close() {
        closed = true;
        writer.close();
        idle.forEach(Session::close);
        idle.clear();
    }

    private void keep(Session session) {
        session.rollback();
        if (closed || idle.size() >= IDLE_READERS) {
            session.close();
        } else {
            idle.push(session);
        }
    }

    private void open() {
        if (!store.current()) {
            makeTables();
        }
        writer.run("set schema " + schema);
        marks.clear();
        marks.putAll(store.read());
        several = told.kept();
    }

    /** Makes the tables anew; they count as made only once all of them stand, since H2 commits each by itself. */
    private void makeTables() {
        store.forget();
        told.forget();
        writer.run("drop schema if exists " + schema + " cascade");
        writer.run("create schema " + schema);
        writer.run("set schema " + schema);
        view.tables().forEach(writer::run);
        store.made();
        writer.commit();
    }

    private void attempt(String where, Runnable work) {
        attempt(() -> where, work);
    }

    private void attempt(Supplier<String> where, Runnable work) {
        try {
            work.run();
            file.refuseForeign();
            failure = Optional.empty();
        } catch (Damaged e) {
            throw e;
        } catch (RuntimeException e) {
            // a table that is not there may be one that could not be read
            file.refuseForeign();
            writer.rollback();
            failure = Optional.of(where.get() + ": " + SqlFailure.firstLine(e));
        } catch (Error e) {
            writer.rollback();
            throw e;
        }
    }
}
