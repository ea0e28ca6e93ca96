package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.Meets;

/** The pages of any question, put together, are what plain filtering and sorting of all results gives. */
class PagingLawTest {
    private static final List<String> PLACES = List.of("filler nozzle", "belt 2", "Übergang", "100% clean_point");
    private static final List<String> METHODS = List.of("hazelnut-rinse", "milk-rinse");

    @Provide
    Arbitrary<List<Plain>> readings() {
        Arbitrary<Optional<String>> line = Arbitraries.of("L1", "L2").optional();
        Arbitrary<Optional<String>> batch = Arbitraries.of("B-1", "B-2", "B-3").optional();
        // few instants, so that many are equal; the first is another day in the site's zone than in UTC
        Arbitrary<Optional<Instant>> started = Arbitraries.integers()
                .between(0, 5)
                .map(hours -> Strips.START.plus(Duration.ofHours(7L * hours)))
                .optional(0.9);
        return Combinators.combine(
                        Arbitraries.of("S-1", "S-2", "s-3"),
                        Arbitraries.of(PLACES),
                        line,
                        batch,
                        Arbitraries.of(METHODS),
                        Arbitraries.of("A17", "B03"),
                        started,
                        Arbitraries.of(Seen.values()))
                .as((sample, place, on, of, method, lot, at, seen) -> new Plain(
                        sample,
                        place,
                        on,
                        of,
                        method,
                        lot,
                        new PersonId("op-0" + sample.charAt(2)),
                        at,
                        seen,
                        Seen.SEEN))
                .list()
                .ofMinSize(0)
                .ofMaxSize(40);
    }

    @Provide
    Arbitrary<Filter> filters() {
        return Combinators.combine(
                        days(),
                        days(),
                        Arbitraries.of(Outcome.class).optional(0.2),
                        Arbitraries.of(PLACES).optional(0.2),
                        Arbitraries.of("B-1", "B-2").optional(0.2),
                        Arbitraries.of(METHODS).map(MethodId::new).optional(0.2),
                        Arbitraries.of("0%", "S-", "_point", "ÜBER", "l1", "nothing")
                                .optional(0.2),
                        Arbitraries.of(true, false, false))
                .as((from, to, outcome, place, batch, method, text, held) -> Filter.ALL
                        .days(from, to)
                        .withOutcome(outcome)
                        .withPlace(place)
                        .withBatch(batch)
                        .withMethod(method)
                        .withText(text)
                        .onlyHeld(held));
    }

    @Provide
    Arbitrary<List<Outcome>> orders() {
        return Arbitraries.shuffle(Outcome.values());
    }

    private static Arbitrary<Optional<LocalDate>> days() {
        return Arbitraries.integers()
                .between(0, 3)
                .map(LocalDate.of(2026, 3, 1)::plusDays)
                .optional(0.2);
    }

    @Provide
    Arbitrary<Sort> sorts() {
        return Combinators.combine(Arbitraries.of(SortColumn.class), Arbitraries.of(true, false))
                .as(Sort::new);
    }

    @Property(tries = 40)
    @Meets({"ALCOA+ available", "ISO/IEC 17025 8.4.1, 8.4.2"})
    void pagesTogetherAreTheWholeAnswer(
            @ForAll("readings") List<Plain> readings,
            @ForAll("filters") Filter filter,
            @ForAll("sorts") Sort sort,
            @ForAll("orders") List<Outcome> outcomes,
            @ForAll @IntRange(min = 1, max = 9) int size)
            throws IOException {
        try (TestSite site = TestSite.made()) {
            site.order(outcomes);
            readings.forEach(plain -> site.record(plain.judged()));
            List<ResultRow> all = pages(site, Filter.ALL, Sort.NEWEST_FIRST, 1000);
            assertThat(all).hasSameSizeAs(readings);
            List<ResultRow> expected = all.stream()
                    .filter(row -> passes(filter, row))
                    .sorted(order(sort, outcomes))
                    .toList();
            assertThat(pages(site, filter, sort, size)).isEqualTo(expected);
            assertThat(site.results.count(filter)).isEqualTo(expected.size());
        }
    }

    private static List<ResultRow> pages(TestSite site, Filter filter, Sort sort, int size) {
        List<ResultRow> rows = new ArrayList<>();
        ResultPage page = site.results.page(filter, sort, Optional.empty(), size);
        rows.addAll(page.rows());
        while (page.more()) {
            assertThat(page.rows()).hasSize(size);
            page = site.results.page(filter, sort, Optional.of(rows.get(rows.size() - 1)), size);
            rows.addAll(page.rows());
        }
        return rows;
    }

    private static boolean passes(Filter filter, ResultRow row) {
        LocalDate day = row.happened().atZone(TestSite.ZONE).toLocalDate();
        return filter.from().stream().noneMatch(day::isBefore)
                && filter.to().stream().noneMatch(day::isAfter)
                && filter.outcome().stream().allMatch(row.outcome()::equals)
                && filter.place().stream().allMatch(row.place()::equals)
                && (filter.batch().isEmpty() || filter.batch().equals(row.batch()))
                && filter.method().stream().allMatch(row.method().id()::equals)
                && filter.text().stream().allMatch(text -> words(row).contains(text.toLowerCase()))
                && (!filter.held() || row.held());
    }

    private static String words(ResultRow row) {
        return String.join(
                        "\n",
                        row.sample(),
                        row.place(),
                        row.method().id().value(),
                        row.target(),
                        row.lot().value(),
                        row.operator().value(),
                        row.line().orElse(""),
                        row.batch().orElse(""))
                .toLowerCase();
    }

    private static Comparator<ResultRow> order(Sort sort, List<Outcome> outcomes) {
        Comparator<ResultRow> ascending = Comparator.comparing(key(sort.column(), outcomes))
                .thenComparing(ResultRow::happened)
                .thenComparing(row -> row.ref().seq());
        return sort.ascending() ? ascending : ascending.reversed();
    }

    private static Function<ResultRow, String> key(SortColumn column, List<Outcome> outcomes) {
        return switch (column) {
            case HAPPENED -> row -> "";
            case SAMPLE -> ResultRow::sample;
            case PLACE -> ResultRow::place;
            case LINE -> row -> row.line().orElse("");
            case BATCH -> row -> row.batch().orElse("");
            case METHOD -> row -> row.method().id().value();
            case TARGET -> ResultRow::target;
            case LOT -> row -> row.lot().value();
            case OPERATOR -> row -> row.operator().value();
            case OUTCOME -> row -> Integer.toString(outcomes.indexOf(row.outcome()));
        };
    }
}
