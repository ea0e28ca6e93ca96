package wickbench.ledger.services;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.ledger.Filter;

/**
 * One condition of a question.
 *
 * @param column the column that must equal the value; empty when the condition is another one
 */
record Condition(Optional<String> column, String sql, List<Object> values) {

    static Condition equal(String column, Object value) {
        return new Condition(Optional.of(column), column + " = ?", List.of(value));
    }

    static Condition of(String sql, Object value) {
        return new Condition(Optional.empty(), sql, List.of(value));
    }

    /**
     * Returns what a filter asks, the most telling first.
     *
     * @param zone asked only where the filter names days
     */
    static List<Condition> of(Filter filter, Supplier<ZoneId> zone) {
        List<Condition> all = new ArrayList<>();
        filter.batch().map(value -> equal("batch", value)).ifPresent(all::add);
        filter.lot().map(LotId::value).map(value -> equal("lot", value)).ifPresent(all::add);
        filter.place().map(value -> equal("place", value)).ifPresent(all::add);
        if (filter.held()) {
            all.add(equal("held", true));
        }
        if (filter.inDoubt()) {
            // only a Negative can be; said so that its index serves
            all.add(equal("outcome", Outcome.NEGATIVE.code()));
            all.add(new Condition(Optional.empty(), DoubtTables.OPEN, List.of()));
        }
        if (filter.unreviewed()) {
            all.add(equal("reviewed", false));
        }
        filter.outcome()
                .map(Outcome::code)
                .map(value -> equal("outcome", value))
                .ifPresent(all::add);
        filter.operator()
                .map(PersonId::value)
                .map(value -> equal("operator", value))
                .ifPresent(all::add);
        filter.method()
                .map(MethodId::value)
                .map(value -> equal("method", value))
                .ifPresent(all::add);
        filter.target().map(value -> equal("target", value)).ifPresent(all::add);
        filter.line().map(value -> equal("line", value)).ifPresent(all::add);
        filter.from().map(day -> of("happened >= ?", start(day, zone))).ifPresent(all::add);
        filter.to().map(day -> of("happened < ?", start(day.plusDays(1), zone))).ifPresent(all::add);
        filter.text()
                .ifPresent(text -> SearchWords.of(text).forEach(word -> all.add(of("position(? in words) > 0", word))));
        return all;
    }

    private static Instant start(LocalDate day, Supplier<ZoneId> zone) {
        return day.atStartOfDay(zone.get()).toInstant();
    }
}
