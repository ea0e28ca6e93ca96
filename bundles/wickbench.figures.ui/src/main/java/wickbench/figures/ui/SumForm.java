package wickbench.figures.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.check.Complaint;
import wickbench.api.words.Decimals;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Input;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.TableText;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/** The fields of one sum; those that a choice does not ask for are not there. */
final class SumForm {
    private static final int FIELD = 130;

    private final Composite room;
    private final PageContext context;
    private final Theme theme;
    private final Sum sum;
    private final Runnable changed;
    private final Runnable grown;
    private final Map<String, String> texts;
    private final Map<String, TableText> tables;
    private final Map<String, Field<? extends Control>> fields = new LinkedHashMap<>();
    private final Map<String, CellTable> cells = new LinkedHashMap<>();

    /**
     * Makes the fields.
     *
     * @param changed hears that an answer may be another
     * @param grown hears that fields were added or taken away
     */
    SumForm(Composite parent, PageContext context, Sum sum, Given first, Runnable changed, Runnable grown) {
        room = Fit.wide(context.theme().controls().box(parent, 1));
        this.context = context;
        theme = context.theme();
        this.sum = sum;
        this.changed = changed;
        this.grown = grown;
        texts = new HashMap<>(first.texts());
        tables = new HashMap<>(first.tables());
        make();
    }

    /** Returns what stands in the fields that are there. */
    Given given() {
        return sum.asked(all());
    }

    private Given all() {
        cells.forEach((name, table) -> tables.put(name, table.text()));
        return new Given(texts, tables);
    }

    /** Says at its field what is wrong; returns whether there is such a field. */
    boolean complain(Reckoned.Wrong wrong) {
        String text = told(wrong.complaint());
        if (cells.containsKey(wrong.input())) {
            cells.get(wrong.input()).complain(text, wrong.complaint().line());
            return true;
        }
        Field<? extends Control> field = fields.get(wrong.input());
        if (field != null) {
            field.complain(wrong.complaint().text());
        }
        return field != null;
    }

    private static String told(Complaint complaint) {
        OptionalInt line = complaint.line();
        String field = complaint.field().isEmpty() ? "" : complaint.field() + ": ";
        return line.isPresent()
                ? FiguresUiWords.get("table.row", line.getAsInt(), field + complaint.text())
                : field + complaint.text();
    }

    void clear() {
        fields.values().forEach(Field::clear);
        cells.values().forEach(CellTable::clear);
    }

    private void make() {
        Form form = new Form(room, theme);
        for (Input input : sum.inputs()) {
            if (input.isAsked(sum.completed(new Given(texts, tables)))) {
                add(form, input);
            }
        }
    }

    private void add(Form form, Input input) {
        String label = sum.label(input);
        if (input.kind() instanceof Input.Kind.Rows rows) {
            table(input, label, rows.columns());
        } else if (input.kind() instanceof Input.Kind.Choice choice) {
            choice(form, input, label, choice.codes());
        } else if (input.kind() instanceof Input.Kind.Flag) {
            flag(form, input, label);
        } else {
            var field = form.text(label);
            sum.hint(input).ifPresent(field.control()::setMessage);
            String text = texts.getOrDefault(input.name(), "");
            field.control().setText(isList(input) ? text : Decimals.shown(text));
            room(field.control());
            field.control().addListener(SWT.Modify, event -> {
                texts.put(input.name(), field.control().getText());
                changed.run();
            });
            fields.put(input.name(), field);
        }
    }

    /** In a list a comma parts two numbers. */
    private static boolean isList(Input input) {
        return input.kind() instanceof Input.Kind.Numbers || input.kind() instanceof Input.Kind.Words;
    }

    private void table(Input input, String label, List<String> columns) {
        CellTable table = new CellTable(room, context, label, columns, changed);
        TableText first = tables.get(input.name());
        if (first != null) {
            table.fill(first);
        }
        cells.put(input.name(), table);
    }

    /** So that a long label leaves room to read what is typed. */
    private void room(Control field) {
        ((GridData) field.getLayoutData()).minimumWidth = theme.px(FIELD);
        ((GridData) field.getLayoutData()).widthHint = theme.px(FIELD);
    }

    /** What may be left out can also be chosen away again: the hint is the first choice then. */
    private void choice(Form form, Input input, String label, List<String> all) {
        List<String> codes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        sum.hint(input).ifPresent(hint -> {
            codes.add("");
            words.add(hint);
        });
        codes.addAll(all);
        all.forEach(code -> words.add(sum.choice(input, code)));
        Field<Combo> field = form.choice(label, words);
        room(field.control());
        field.control().select(codes.indexOf(texts.getOrDefault(input.name(), "")));
        field.control().addListener(SWT.Selection, event -> {
            texts.put(input.name(), codes.get(field.control().getSelectionIndex()));
            decided(input);
        });
        fields.put(input.name(), field);
    }

    private void flag(Form form, Input input, String label) {
        Field<Button> field = form.field("", parent -> theme.controls().check(parent, label));
        field.control().setSelection("yes".equals(texts.get(input.name())));
        field.control().addListener(SWT.Selection, event -> {
            texts.put(input.name(), field.control().getSelection() ? "yes" : "no");
            decided(input);
        });
        fields.put(input.name(), field);
    }

    /** A choice that other inputs hang on makes the fields anew, once its own event is over. */
    private void decided(Input input) {
        boolean asks = sum.inputs().stream()
                .anyMatch(each -> each.only()
                        .filter(only -> only.input().equals(input.name()))
                        .isPresent());
        if (asks) {
            context.update(() -> again(input.name()));
        } else {
            changed.run();
        }
    }

    private void again(String focus) {
        all();
        for (Control child : room.getChildren()) {
            child.dispose();
        }
        fields.clear();
        cells.clear();
        make();
        fields.get(focus).control().setFocus();
        grown.run();
        changed.run();
    }
}
