package wickbench.ledger.ui;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;
import wickbench.reading.OutcomeWords;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The fields over the table that narrow the results down, in as many rows as the width asks for. */
final class FilterBar {
    private static final int PAUSE_MILLIS = 300;

    private final Theme theme;
    private final Composite box;
    private final Composite row;
    private final Map<FilterItem, Supplier<String>> fields = new EnumMap<>(FilterItem.class);
    private final Map<FilterItem, Consumer<String>> writers = new EnumMap<>(FilterItem.class);
    private final Button held;
    private final Button inDoubt;
    private final Button unreviewed;
    private final Label wrong;
    private final Runnable changed;
    private volatile Filter filter = Filter.ALL;

    /** @param order in which outcomes are offered */
    FilterBar(Composite parent, Theme theme, List<Outcome> order, Runnable changed) {
        this.theme = theme;
        this.changed = changed;
        box = Fit.wide(theme.controls().box(parent, 1));
        row = Fit.wide(new Composite(box, SWT.NONE));
        row.setBackground(parent.getBackground());
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.center = true;
        layout.marginLeft = 0;
        layout.spacing = theme.metrics().grid(1);
        row.setLayout(layout);
        List.of(FilterItem.FROM, FilterItem.TO).forEach(item -> text(item, 108));
        outcome(order);
        List.of(FilterItem.PLACE, FilterItem.LINE, FilterItem.BATCH, FilterItem.METHOD)
                .forEach(item -> text(item, item == FilterItem.LINE ? 56 : 120));
        held = theme.controls().check(row, LedgerUiWords.get("filter.held"));
        held.addListener(SWT.Selection, event -> read());
        inDoubt = theme.controls().check(row, LedgerUiWords.get("filter.in-doubt"));
        inDoubt.addListener(SWT.Selection, event -> read());
        unreviewed = theme.controls().check(row, LedgerUiWords.get("filter.unreviewed"));
        unreviewed.addListener(SWT.Selection, event -> read());
        theme.controls().button(row, LedgerUiWords.get("filter.clear"), this::clear);
        wrong = theme.controls().label(box, Type.SMALL, "");
        wrong.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
        say("");
    }

    /** Returns the filter as it stands; may be called from any thread. */
    Filter filter() {
        return filter;
    }

    /** Returns the row of the fields, for a button that goes with them. */
    Composite row() {
        return row;
    }

    private void text(FilterItem item, int width) {
        Text field = theme.controls().field(cell(item));
        field.setMessage(item == FilterItem.FROM || item == FilterItem.TO ? LedgerUiWords.get("filter.day") : "");
        Fit.width(field, theme.px(width));
        Names.give(field, item::words);
        fields.put(item, field::getText);
        writers.put(item, field::setText);
        Runnable read = this::readIfAlive;
        field.addListener(SWT.Modify, event -> field.getDisplay().timerExec(PAUSE_MILLIS, read));
    }

    private void outcome(List<Outcome> outcomes) {
        Combo choice = theme.controls()
                .choice(
                        cell(FilterItem.OUTCOME),
                        Stream.concat(
                                        Stream.of(LedgerUiWords.get("filter.any")),
                                        outcomes.stream().map(OutcomeWords::text))
                                .toList());
        choice.select(0);
        Names.give(choice, FilterItem.OUTCOME::words);
        fields.put(
                FilterItem.OUTCOME,
                () -> choice.getSelectionIndex() <= 0
                        ? ""
                        : outcomes.get(choice.getSelectionIndex() - 1).code());
        writers.put(
                FilterItem.OUTCOME,
                code -> choice.select(code.isEmpty() ? 0 : outcomes.indexOf(Coded.of(Outcome.class, code)) + 1));
        choice.addListener(SWT.Selection, event -> read());
    }

    private Composite cell(FilterItem item) {
        Composite cell = theme.controls().box(row, 2);
        cell.setLayoutData(new RowData());
        theme.controls().quiet(cell, item.words());
        return cell;
    }

    /** Narrows down to one value of one field. */
    void put(FilterItem item, String text) {
        writers.get(item).accept(text);
        read();
    }

    /** Narrows down to what holds line and product, or not. */
    void onlyHeld(boolean only) {
        held.setSelection(only);
        read();
    }

    /** Narrows down to Negatives in doubt that nobody has decided on, or not. */
    void onlyInDoubt(boolean only) {
        inDoubt.setSelection(only);
        read();
    }

    /** Narrows down to what nobody has reviewed as it stands, or not. */
    void onlyUnreviewed(boolean only) {
        unreviewed.setSelection(only);
        read();
    }

    private void clear() {
        writers.values().forEach(writer -> writer.accept(""));
        held.setSelection(false);
        inDoubt.setSelection(false);
        unreviewed.setSelection(false);
        read();
    }

    private void readIfAlive() {
        if (!box.isDisposed()) {
            read();
        }
    }

    private void read() {
        Map<FilterItem, String> typed = new EnumMap<>(FilterItem.class);
        fields.forEach((item, text) -> typed.put(item, text.get()));
        FilterForm.Read read =
                FilterForm.read(typed, held.getSelection(), inDoubt.getSelection(), unreviewed.getSelection());
        say(read.wrong().entrySet().stream()
                .map(one -> one.getKey().words() + ": " + one.getValue())
                .reduce((one, other) -> one + "  " + other)
                .orElse(""));
        if (!read.filter().equals(filter)) {
            filter = read.filter();
            changed.run();
        }
    }

    private void say(String words) {
        wrong.setText(words);
        wrong.setVisible(!words.isEmpty());
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.exclude = words.isEmpty();
        wrong.setLayoutData(data);
        wrong.requestLayout();
    }
}
