package wickbench.benchmarks;

import java.nio.file.Path;
import java.time.LocalDate;
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
    /** A twentieth of the 957 ms in which LibreOffice opened a table of 100,000 rows, and a fifth of the 52 ms in which it filtered it. */
    private static final double OPEN = 47.8;

    private static final double COUNT = 10.4;
    private static final double MILLION = 100;
    private static final double SECOND = 1_000;

    /** What is asked. */
    private interface Asked {
        /** @return how many rows, or what was counted, so that an empty answer is no answer */
        long ask(FilledLedger ledger, Results results, int round);
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
                        ledger, "opened, and its first page,", 1, LedgerSearch::opened, million ? MILLION : OPEN),
                new LedgerSearch(
                        ledger, "first page", 50, (all, results, round) -> first(results), million ? MILLION : OPEN),
                new LedgerSearch(ledger, "page at the far end", 50, new Far(), 0),
                new LedgerSearch(
                        ledger,
                        "filter by place and outcome, and count,",
                        20,
                        (all, results, round) -> results.count(Filter.ALL
                                .withPlace(Optional.of(Readings.place(round)))
                                .withOutcome(Optional.of(Outcome.NEGATIVE))),
                        million ? 10 * COUNT : COUNT),
                new LedgerSearch(
                        ledger,
                        "filter by a month, and count,",
                        20,
                        (all, results, round) -> results.count(Filter.ALL.days(
                                Optional.of(LocalDate.of(2026, 1, 6)), Optional.of(LocalDate.of(2026, 2, 5)))),
                        million ? 10 * COUNT : COUNT),
                new LedgerSearch(
                        ledger,
                        "free text, the first page that has it,",
                        5,
                        (all, results, round) -> page(results, text("nozzle " + round % 40), Optional.empty())
                                .size(),
                        MILLION),
                new LedgerSearch(
                        ledger,
                        "free text that one result has, found and counted,",
                        1,
                        (all, results, round) -> {
                            Filter one = text("s" + (1234 + round) + " hazelnut");
                            return Math.min(
                                    results.count(one),
                                    page(results, one, Optional.empty()).size());
                        },
                        SECOND));
    }

    private static Filter text(String words) {
        return Filter.ALL.withText(Optional.of(words));
    }

    private static List<ResultRow> page(Results results, Filter filter, Optional<ResultRow> after) {
        return results.page(filter, Sort.NEWEST_FIRST, after, PAGE).rows();
    }

    private static long first(Results results) {
        return page(results, Filter.ALL, Optional.empty()).size();
    }

    /** The program has none of it open. */
    private static long opened(FilledLedger ledger, Results none, int round) {
        try (Site site = ledger.open()) {
            return first(new LedgerResults(site.index, site.journal, site::facts));
        }
    }

    /** The last page but one, as somebody reaches it who has paged all the way; where that begins is looked up before. */
    private static final class Far implements Asked {
        private Optional<ResultRow> before = Optional.empty();

        @Override
        public long ask(FilledLedger ledger, Results results, int round) {
            if (before.isEmpty()) {
                List<ResultRow> oldest = results.page(
                                Filter.ALL, new Sort(SortColumn.HAPPENED, true), Optional.empty(), 2 * PAGE)
                        .rows();
                before = Optional.of(oldest.get(oldest.size() - 1));
            }
            return page(results, Filter.ALL, before).size();
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
        if (times == 1 && what.startsWith("opened")) {
            return new Field(new Ours(this, Optional.empty()), List.of(new Baseline(new Limit(limit), 1)));
        }
        Site site = ledger.open();
        Ours ours = new Ours(this, Optional.of(site));
        return new Field(
                ours, List.of(new Baseline(limit > 0 ? new Limit(limit) : new First(ours), limit > 0 ? 1 : OF_FIRST)));
    }

    /** Asks as often as the lap says, each time for something else. */
    private record Ours(LedgerSearch search, Optional<Site> site) implements Contestant {
        @Override
        public String name() {
            return "ledger";
        }

        Optional<Results> results() {
            return site.map(open -> new LedgerResults(open.index, open.journal, open::facts));
        }

        @Override
        public double lap() throws Exception {
            return timed(search.asked);
        }

        double timed(Asked asked) throws Exception {
            Results results = results().orElse(null);
            return Timed.millis(() -> {
                        for (int round = 0; round < search.times; round++) {
                            if (asked.ask(search.ledger, results, round) == 0) {
                                throw new IllegalStateException(search.figure() + " found nothing");
                            }
                        }
                    })
                    / search.times;
        }

        @Override
        public void close() {
            site.ifPresent(Site::close);
        }
    }

    /** The first page of the same ledger. */
    private record First(Ours ours) implements Contestant {
        @Override
        public String name() {
            return "its first page";
        }

        @Override
        public double lap() throws Exception {
            return ours.timed((ledger, results, round) -> first(results));
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
