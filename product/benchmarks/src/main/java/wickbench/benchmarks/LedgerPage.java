package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.progress.Progress;
import wickbench.ledger.Filter;
import wickbench.ledger.Sort;
import wickbench.ledger.services.LedgerResults;
import wickbench.ledger.services.LedgerView;

/** The first page of results at one place, newest first, as the ledger asks for it. */
final class LedgerPage implements Contest {
    private static final double OF_RAW = 1.5;
    private static final int PAGE = 100;
    private static final int ASKED = 200;

    private final int results;

    LedgerPage(int results) {
        this.results = results;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "first page of a filtered ledger of %,d results", results);
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 15;
    }

    @Override
    public int warmUps() {
        return 20;
    }

    @Override
    public Field field(Path folder) throws Exception {
        Path home = folder.resolve("home");
        try (Site site = new Site(home, new LedgerView())) {
            site.fill(results, number -> Readings.draft(site.home.chance(), number));
            site.index.catchUp(Progress.NONE);
        }
        Path copy = folder.resolve("copy.mv.db");
        Files.copy(IndexFile.below(home), copy);
        Site site = new Site(home, new LedgerView());
        Ours ours = new Ours(site, new LedgerResults(site.index, site.journal, site::facts));
        return new Field(ours, List.of(new Baseline(new Raw(IndexFile.open(copy)), OF_RAW)));
    }

    private record Ours(Site site, LedgerResults asked) implements Contestant {
        @Override
        public String name() {
            return "ledger page";
        }

        @Override
        public double lap() throws Exception {
            return Timed.millis(() -> {
                        for (int i = 0; i < ASKED; i++) {
                            Filter filter = Filter.ALL.withPlace(Optional.of(Readings.place(i)));
                            int rows = asked.page(filter, Sort.NEWEST_FIRST, Optional.empty(), PAGE)
                                    .rows()
                                    .size();
                            requireFull(rows);
                        }
                    })
                    / ASKED;
        }

        @Override
        public void close() {
            site.close();
        }
    }

    /** The same question past the program: one prepared statement over the same index, every column taken. */
    private record Raw(Connection connection) implements Contestant {
        private static final String SQL = "select * from \"ledger\".statement where counts and place = ?"
                + " order by place desc, happened desc, first_station desc, first_seq desc fetch first ? rows only";

        @Override
        public String name() {
            return "raw indexed H2 query";
        }

        @Override
        public double lap() throws Exception {
            try (PreparedStatement query = connection.prepareStatement(SQL)) {
                return Timed.millis(() -> {
                            for (int i = 0; i < ASKED; i++) {
                                requireFull(page(query, Readings.place(i)));
                            }
                        })
                        / ASKED;
            }
        }

        private static int page(PreparedStatement query, String place) throws SQLException {
            query.setString(1, place);
            query.setInt(2, PAGE);
            int rows = 0;
            try (ResultSet found = query.executeQuery()) {
                int columns = found.getMetaData().getColumnCount();
                while (found.next()) {
                    for (int column = 1; column <= columns; column++) {
                        found.getObject(column);
                    }
                    rows++;
                }
            }
            return rows;
        }

        @Override
        public void close() throws SQLException {
            connection.close();
        }
    }

    private static void requireFull(int rows) {
        if (rows != PAGE) {
            throw new IllegalStateException("a page of " + rows);
        }
    }
}
