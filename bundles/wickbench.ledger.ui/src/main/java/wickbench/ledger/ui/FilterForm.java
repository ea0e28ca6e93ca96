package wickbench.ledger.ui;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;

/** Turns what is typed over the table into a filter, or says what is wrong. */
final class FilterForm {
    private final Map<FilterItem, String> typed;
    private final Map<FilterItem, String> wrong = new EnumMap<>(FilterItem.class);

    /**
     * The filter as far as it makes sense.
     *
     * @param wrong what is wrong, by its field; those fields do not filter
     */
    record Read(Filter filter, Map<FilterItem, String> wrong) {}

    private FilterForm(Map<FilterItem, String> typed) {
        this.typed = typed;
    }

    static Read read(Map<FilterItem, String> typed, boolean held, boolean inDoubt, boolean unreviewed) {
        FilterForm form = new FilterForm(typed);
        Filter filter = Filter.ALL
                .days(form.take(FilterItem.FROM, FilterForm::day), form.take(FilterItem.TO, FilterForm::day))
                .withOutcome(form.take(FilterItem.OUTCOME, code -> Coded.of(Outcome.class, code)))
                .withMethod(form.take(FilterItem.METHOD, FilterForm::method))
                .withPlace(form.take(FilterItem.PLACE, text -> text))
                .withLine(form.take(FilterItem.LINE, text -> text))
                .withBatch(form.take(FilterItem.BATCH, text -> text))
                .onlyHeld(held)
                .onlyInDoubt(inDoubt)
                .onlyUnreviewed(unreviewed);
        return new Read(filter, form.wrong);
    }

    private <T> Optional<T> take(FilterItem item, Function<String, T> parse) {
        String text = typed.getOrDefault(item, "").strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(text));
        } catch (IllegalArgumentException e) {
            wrong.put(item, e.getMessage());
            return Optional.empty();
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(LedgerUiWords.get("filter.day-expected"), e);
        }
    }

    private static MethodId method(String text) {
        try {
            return new MethodId(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(LedgerUiWords.get("filter.method-expected"), e);
        }
    }
}
