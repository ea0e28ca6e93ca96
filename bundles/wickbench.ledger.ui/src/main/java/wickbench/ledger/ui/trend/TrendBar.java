package wickbench.ledger.ui.trend;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.api.method.MethodId;
import wickbench.ledger.Filter;
import wickbench.ledger.trend.Trending.Events;
import wickbench.ledger.trend.Trending.Rank;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/** Of what a trend is shown: Positives or Invalids, which line, which point, which days. */
final class TrendBar {
    private final Theme theme;
    private final Runnable changed;
    private final Composite row;
    private final Combo events;
    private final Combo line;
    private final Combo place;
    private final Combo method;
    private final Combo target;
    private final Text from;
    private final Text to;

    TrendBar(Composite parent, Theme theme, Runnable changed) {
        this.theme = theme;
        this.changed = changed;
        row = theme.controls().row(parent);
        events = combo(
                "bar.events",
                Arrays.stream(Events.values())
                        .map(each -> TrendWords.get("events." + each.code()))
                        .toList());
        line = combo("bar.line", List.of(TrendWords.get("bar.all-lines")));
        place = combo("bar.place", List.of(TrendWords.get("bar.all-places")));
        method = combo("bar.method", List.of(TrendWords.get("bar.all-methods")));
        target = combo("bar.target", List.of(TrendWords.get("bar.all-targets")));
        // side by side, wherever the row breaks
        Composite days = theme.controls().box(row, 2);
        days.setLayoutData(new RowData());
        from = day(days, "bar.from");
        to = day(days, "bar.to");
    }

    private Combo combo(String name, List<String> choices) {
        Combo combo = theme.controls().choice(row, choices);
        combo.setLayoutData(null);
        combo.select(0);
        Names.give(combo, () -> TrendWords.get(name));
        combo.addListener(SWT.Selection, event -> changed.run());
        return combo;
    }

    private Text day(Composite days, String name) {
        Text text = Fit.width(theme.controls().field(days), theme.px(150));
        text.setMessage(TrendWords.get(name));
        Names.give(text, () -> TrendWords.get(name));
        text.addListener(SWT.DefaultSelection, event -> changed.run());
        text.addListener(SWT.FocusOut, event -> left(text));
        return text;
    }

    /** Asks anew when a day was changed and the field is left. */
    private void left(Text text) {
        if (!text.getText().equals(text.getData())) {
            text.setData(text.getText());
            changed.run();
        }
    }

    /** Offers what was tested, and by what; what is chosen stays chosen. */
    void offer(Trend whole) {
        fill(line, "bar.all-lines", whole.lines());
        fill(place, "bar.all-places", whole.points());
        fill(method, "bar.all-methods", whole.methods());
        fill(target, "bar.all-targets", whole.targets());
        row.getParent().layout(true, true);
    }

    private static void fill(Combo combo, String all, List<Rank> ranks) {
        String chosen = combo.getSelectionIndex() > 0 ? combo.getText() : "";
        List<String> items = new ArrayList<>(List.of(TrendWords.get(all)));
        ranks.stream().map(Rank::name).sorted().forEach(items::add);
        combo.setItems(items.toArray(String[]::new));
        combo.select(Math.max(0, items.indexOf(chosen)));
    }

    Events events() {
        return Events.values()[events.getSelectionIndex()];
    }

    /**
     * Returns the filter.
     *
     * @throws IllegalArgumentException when a day is none, saying what was expected
     */
    Filter filter() {
        Optional<LocalDate> first = parsed(from);
        Optional<LocalDate> last = parsed(to);
        if (first.isPresent() && last.isPresent() && last.get().isBefore(first.get())) {
            throw new IllegalArgumentException(TrendWords.get("bar.before", last.get(), first.get()));
        }
        return Filter.ALL
                .days(first, last)
                .withLine(chosen(line))
                .withPlace(chosen(place))
                .withMethod(chosen(method).map(MethodId::new))
                .withTarget(chosen(target));
    }

    private static Optional<String> chosen(Combo combo) {
        return combo.getSelectionIndex() > 0 ? Optional.of(combo.getText()) : Optional.empty();
    }

    private static Optional<LocalDate> parsed(Text text) {
        String typed = text.getText().strip();
        try {
            return typed.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(typed));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(TrendWords.get("bar.day", typed), e);
        }
    }

    Control first() {
        return events;
    }

    Text from() {
        return from;
    }

    Text to() {
        return to;
    }

    Combo line() {
        return line;
    }

    Combo method() {
        return method;
    }
}
