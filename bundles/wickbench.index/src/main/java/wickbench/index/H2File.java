package wickbench.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.h2.jdbcx.JdbcDataSource;
import org.h2.store.fs.FilePath;
import wickbench.api.check.Refusal;
import wickbench.api.words.Words;
import wickbench.index.SqlFailure.Damaged;

/** The file {@code h2-VERSION/house.mv.db}, open; an H2 of another version gets a file of its own. */
final class H2File implements AutoCloseable {
    static final String NAME = "house";
    /** Stands beside the file while it is being filled. */
    private static final String FILLING = "filling";

    private static final Words WORDS = Words.of(H2File.class, "index");
    /** DATABASE_ALREADY_OPEN. */
    private static final int LOCKED = 90020;

    /** How long H2 keeps what it has overwritten, for the disk to have taken what came instead; its own default. */
    private static final int RETAINED_MS = 45_000;
    /** After how long H2 writes what changed, in its own time: never. */
    private static final int NEVER_MS = Integer.MAX_VALUE;
    /** The same while much changes, or once 19 MB wait: pages that change again and again are written less often. */
    private static final int WHILE_FILLING_MS = 5_000;
    /** As often what changed is written at most; what a program that is killed had not written comes from the journal again. */
    private static final Duration WRITTEN = Duration.ofMillis(500);

    private static final long SMALLEST_CACHE_KB = 16 * 1024;
    private static final long LARGEST_CACHE_KB = 256 * 1024;

    private final Trust trust = new Trust();
    private final CheckedPath checked = CheckedPath.register(trust);
    private final JdbcDataSource source = new JdbcDataSource();
    /** H2 closes its file with the last connection; this one stays. */
    private final Connection anchor;

    private final Path folder;
    /** Whoever wrote it did not come to close it. */
    private final boolean leftOpen;

    private long written = System.nanoTime();

    private H2File(Path folder) throws SQLException {
        this.folder = folder;
        leftOpen = Files.exists(folder.resolve(NAME + ".mv.db")) && !Files.exists(folder.resolve(NAME + ".mv.db.sums"));
        source.setURL("jdbc:h2:" + checked.getScheme() + ":" + folder.resolve(NAME)
                + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;CACHE_SIZE=" + cacheKb());
        try {
            anchor = source.getConnection();
        } catch (SQLException e) {
            FilePath.unregister(checked);
            throw e;
        }
        leaveWriting();
    }

    /** Keeps H2 from writing in its own time; a file that does not bear that is closed again, for another to take its place. */
    private void leaveWriting() throws SQLException {
        try {
            write("set write_delay " + NEVER_MS);
        } catch (SQLException e) {
            try (anchor) {
                throw e;
            } finally {
                FilePath.unregister(checked);
            }
        }
    }

    /** Opens the file below {@code root}; one that cannot be read is thrown away and told. */
    static H2File open(Path root, Consumer<String> notice) {
        Path folder = root.toAbsolutePath().resolve("h2-" + version());
        if (folder.toString().contains(";")) {
            throw new Refusal("index.folder", WORDS.get("index.folder", folder));
        }
        if (Files.exists(folder.resolve(FILLING))) {
            delete(folder);
        }
        try {
            return new H2File(folder);
        } catch (SQLException e) {
            if (e.getErrorCode() == LOCKED) {
                throw new Refusal("home.held", WORDS.get("index.held", folder));
            }
            notice.accept(damaged(e));
        }
        delete(folder);
        return openNew(folder);
    }

    private static H2File openNew(Path folder) {
        try {
            return new H2File(folder);
        } catch (SQLException e) {
            throw new Refusal("index.failed", WORDS.get("index.failed", folder, SqlFailure.firstLine(e)));
        }
    }

    /**
     * Lets much be written at once into a file that stays small.
     *
     * <p>Space is taken again as soon as it is free, which a power cut might not forgive; so a file whose filling was cut short is
     * thrown away when it is next opened.
     */
    void fill(Runnable work) {
        try (Session session = session("house", true)) {
            Files.write(folder.resolve(FILLING), new byte[0]);
            session.run("set retention_time 0");
            session.run("set write_delay " + WHILE_FILLING_MS);
            try {
                work.run();
            } finally {
                session.run("set write_delay " + NEVER_MS);
                session.run("set retention_time " + RETAINED_MS);
            }
            session.run("checkpoint sync");
            Files.delete(folder.resolve(FILLING));
        } catch (IOException e) {
            throw unwritten(folder, e);
        }
    }

    /**
     * Writes what was changed until now, unless that was done a moment ago; to be asked between transactions, by whoever changes.
     *
     * <p>Left to itself, H2 writes one table after the other while rows go on being changed. Of a program that is killed then, the file
     * may hold a row of a transaction without what would take it back.
     */
    void keep() {
        if (System.nanoTime() - written < WRITTEN.toNanos()) {
            return;
        }
        try {
            write("checkpoint");
            written = System.nanoTime();
        } catch (SQLException e) {
            throw SqlFailure.of("checkpoint", e);
        }
    }

    private void write(String sql) throws SQLException {
        try (Statement statement = anchor.createStatement()) {
            statement.execute(sql);
        }
    }

    /** Refuses what was read when a part of the file turned out to be foreign. */
    void refuseForeign() {
        trust.refuseAnswer();
    }

    /** Opens a session whose tables are those of {@code schema}. */
    Session session(String schema, boolean mayWrite) {
        try {
            Connection connection = source.getConnection();
            connection.setAutoCommit(false);
            // a reader's transaction sees the tables as of its first question
            connection.setTransactionIsolation(
                    mayWrite ? Connection.TRANSACTION_READ_COMMITTED : Connection.TRANSACTION_SERIALIZABLE);
            Session session = new Session(connection, mayWrite, leftOpen);
            session.run("set schema " + schema);
            return session;
        } catch (SQLException e) {
            throw SqlFailure.of("connect", e);
        }
    }

    @Override
    public void close() {
        try {
            anchor.close();
        } catch (SQLException e) {
            throw new Damaged(e);
        } finally {
            FilePath.unregister(checked);
        }
    }

    /** Closes a file that is thrown away next: nothing of it is kept, nor put in order for another time. */
    void abandon() {
        try {
            write("shutdown immediately");
        } catch (SQLException e) {
            throw new Damaged(e);
        } finally {
            FilePath.unregister(checked);
        }
    }

    /** Returns what to say when the disk took no more; the journal holds all that the file would. */
    static Refusal unwritten(Path folder, Exception why) {
        return new Refusal("index.unwritten", WORDS.get("index.unwritten", folder, SqlFailure.firstLine(why)));
    }

    /** Returns the notice that a file was broken and is made again. */
    static String damaged(Exception why) {
        return WORDS.get("index.damaged", SqlFailure.firstLine(why));
    }

    /** Deletes the index files below a folder, which need not be there. */
    static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An eighth of the heap, within bounds: one that holds the working set reads two to three times as fast. */
    private static long cacheKb() {
        long eighth = Runtime.getRuntime().maxMemory() / 8 / 1024;
        return Math.max(SMALLEST_CACHE_KB, Math.min(eighth, LARGEST_CACHE_KB));
    }

    private static String version() {
        JdbcDataSource memory = new JdbcDataSource();
        memory.setURL("jdbc:h2:mem:");
        try (Connection connection = memory.getConnection()) {
            return connection.getMetaData().getDatabaseProductVersion().split(" ")[0];
        } catch (SQLException e) {
            throw SqlFailure.of("version", e);
        }
    }
}
