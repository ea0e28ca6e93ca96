package wickbench.benchmarks;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.reading.Outcome;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;
import wickbench.ledger.services.LedgerResults;

/** Looking through many results: what somebody waits for at the page, held against a fixed limit or against the first page. */
final class LedgerSearch implements Contest {
    private static final int PAGE = 100;
    private static final double OF_FIRST = 1.5;
    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 1, 5);
    /** A twentieth of the 957 ms in which LibreOffice opened a table of 100,000 rows, and a fifth of the 52 ms in which it filtered it. */
    private static final double OPEN = 47.8;

    private static final double COUNT = 10.4;
    private static final double MILLION = 100;
    private static final double SECOND = 1_000;

    /** What is asked; never the same twice, since the database keeps answers. */
    private interface Asked {
        /** @return how many rows, or what was counted, so that an empty answer is no answer */
        long ask(Results results, int round);
    }

    private final FilledLedger ledger;
    private final String what;
    private final int times;
    private final Asked asked;
    private final double limit;

    private LedgerSearch(FilledLedger ledger, String what, int times, Asked asked, double limit) {
        this.ledger = ledger;
        this.what = what;
        this.times = times;
        this.asked = asked;
        this.limit = limit;
    }

    /** Returns all of them over one home. */
    static List<Contest> over(FilledLedger ledger) {
        boolean million = ledger.results() >= 1_000_000;
        return List.of(
                new LedgerSearch(
                        ledger,
                        "opened, and its first page,",
                        1,
                        (results, round) -> first(results, round),
                        million ? MILLION : OPEN),
                new LedgerSearch(
                        ledger, "first page", 50, (results, round) -> first(results, round), million ? MILLION : OPEN),
                new LedgerSearch(ledger, "page at the far end", 50, new Far(), 0),
                new LedgerSearch(
                        ledger,
                        "filter by place and outcome, and count,",
                        20,
                        (results, round) -> results.count(Filter.ALL
                                .withPlace(Optional.of(Readings.place(round)))
                                .withOutcome(Optional.of(Outcome.NEGATIVE))),
                        million ? 10 * COUNT : COUNT),
                new LedgerSearch(
                        ledger,
                        "filter by a month, and count,",
                        20,
                        (results, round) -> results.count(Filter.ALL.days(
                                Optional.of(FIRST_DAY.plusDays(round % 12)),
                                Optional.of(FIRST_DAY.plusDays(round % 13 + 28)))),
                        million ? 10 * COUNT : COUNT),
                new LedgerSearch(
                        ledger,
                        "free text, the first page that has it,",
                        5,
                        (results, round) -> page(results, text("nozzle b" + round), Optional.empty(), PAGE)
                                .size(),
                        MILLION),
                new LedgerSearch(
                        ledger,
                        "free text that one result has, found and counted,",
                        1,
                        (results, round) -> {
                            Filter one = text("s" + (1234 + round));
                            return Math.min(
                                    results.count(one),
                                    page(results, one, Optional.empty(), PAGE).size());
                        },
                        SECOND));
    }

    private static Filter text(String words) {
        return Filter.ALL.withText(Optional.of(words));
    }

    private static List<ResultRow> page(Results results, Filter filter, Optional<ResultRow> after, int size) {
        return results.page(filter, Sort.NEWEST_FIRST, after, size).rows();
    }

    private static long first(Results results, int round) {
        return page(results, Filter.ALL, Optional.empty(), PAGE + round % PAGE).size();
    }

    /** Pages at the oldest end, as somebody reaches them who has paged all the way; where they begin is looked up before. */
    private static final class Far implements Asked {
        private final List<ResultRow> before = new ArrayList<>();

        @Override
        public long ask(Results results, int round) {
            if (before.isEmpty()) {
                List<ResultRow> oldest = results.page(
                                Filter.ALL, new Sort(SortColumn.HAPPENED, true), Optional.empty(), 4 * PAGE)
                        .rows();
                before.addAll(oldest.subList(2 * PAGE, 4 * PAGE));
            }
            return page(results, Filter.ALL, Optional.of(before.get(round % before.size())), PAGE + round % PAGE)
                    .size();
        }
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "search: %s of %,d results", what, ledger.results());
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 9;
    }

    @Override
    public int warmUps() {
        return 3;
    }

    @Override
    public Field field(Path folder) {
        ledger.make(folder);
        if (what.startsWith("opened")) {
            return new Field(new Opened(ledger), List.of(new Baseline(new Limit(limit), 1)));
        }
        Asking asking = new Asking(ledger.open(), times);
        return new Field(
                new Ours(asking, asked),
                List.of(limit > 0 ? new Baseline(new Limit(limit), 1) : new Baseline(new First(asking), OF_FIRST)));
    }

    /** A ledger that is open, asked as often as a lap says. */
    private static final class Asking {
        private final Site site;
        private final Results results;
        private final int times;
        private int asked;

        Asking(Site site, int times) {
            this.site = site;
            this.times = times;
            results = new LedgerResults(site.index, site.journal, site::facts);
        }

        double millis(Asked what) throws Exception {
            return Timed.millis(() -> {
                        for (int time = 0; time < times; time++) {
                            if (what.ask(results, asked++) == 0) {
                                throw new IllegalStateException("nothing was found the time " + asked);
                            }
                        }
                    })
                    / times;
        }
    }

    private record Ours(Asking asking, Asked what) implements Contestant {
        @Override
        public String name() {
            return "ledger";
        }

        @Override
        public double lap() throws Exception {
            return asking.millis(what);
        }

        @Override
        public void close() {
            asking.site.close();
        }
    }

    /** The first page of the same ledger. */
    private record First(Asking asking) implements Contestant {
        @Override
        public String name() {
            return "its first page";
        }

        @Override
        public double lap() throws Exception {
            return asking.millis(LedgerSearch::first);
        }
    }

    /** Home, journal and index opened in a program that runs, until the first page is there; closing them is not waited for. */
    private record Opened(FilledLedger ledger) implements Contestant {
        @Override
        public String name() {
            return "ledger";
        }

        @Override
        public double lap() throws Exception {
            Site[] opened = new Site[1];
            double millis = Timed.millis(() -> {
                opened[0] = ledger.open();
                first(new LedgerResults(opened[0].index, opened[0].journal, opened[0]::facts), 0);
            });
            opened[0].close();
            return millis;
        }
    }

    private record Limit(double millis) implements Contestant {
        @Override
        public String name() {
            return "a fixed limit";
        }

        @Override
        public double lap() {
            return millis;
        }
    }
}
