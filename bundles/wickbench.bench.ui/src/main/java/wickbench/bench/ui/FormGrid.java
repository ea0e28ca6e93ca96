package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.api.words.Coded;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A card with a heading and fields, one or two a row; the fields of each column line up. */
final class FormGrid {
    private static final int TWO_A_ROW = 430;

    private final Theme theme;
    private final Composite over;
    private final Composite card;
    private final List<Composite> rows = new ArrayList<>();
    private final Map<Form, List<Control>> labels = new HashMap<>();
    private final List<List<Form>> columns = List.of(new ArrayList<>(), new ArrayList<>());

    /**
     * @param over what lists may drop over
     */
    FormGrid(Composite parent, Composite over, Theme theme, String heading) {
        this.theme = theme;
        this.over = over;
        card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, heading);
        card.addListener(SWT.Resize, event -> arrange());
    }

    /** Puts the fields of a row one below the other where there is little room; labels line up either way. */
    private void arrange() {
        boolean two = card.getClientArea().width >= theme.px(TWO_A_ROW);
        rows.forEach(row -> ((GridLayout) row.getLayout()).numColumns = two ? 2 : 1);
        if (two) {
            columns.forEach(this::lineUp);
        } else {
            lineUp(columns.stream().flatMap(List::stream).toList());
        }
    }

    Composite card() {
        return card;
    }

    /** Returns a form over the whole width. */
    Form whole() {
        return keep(0, new Form(card, theme));
    }

    /** Returns two forms for a field each, one beside the other where there is room. */
    List<Form> halves() {
        Composite row = Fit.wide(theme.controls().box(card, 2));
        ((GridLayout) row.getLayout()).makeColumnsEqualWidth = true;
        ((GridLayout) row.getLayout()).horizontalSpacing = theme.metrics().grid(2);
        rows.add(row);
        List<Form> halves = List.of(keep(0, new Form(row, theme)), keep(1, new Form(row, theme)));
        // what is said below a field must not push its neighbour to the middle
        halves.forEach(form -> form.grid().setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false)));
        return halves;
    }

    Slot text(Form form, Item item) {
        Field<Text> field = labelled(form, () -> form.text(item.words()));
        return slot(field, field.control());
    }

    Slot choice(Form form, Item item, List<? extends Coded> codes) {
        Field<Combo> field = labelled(form, () -> form.choice(item.words(), Choice.words(codes)));
        Choice choice = new Choice(field.control(), codes);
        field.control().select(0);
        return new Slot(field, field.control(), choice.reader(), choice::put);
    }

    Slot pick(Form form, Item item, Consumer<PickField> made) {
        List<PickField> picks = new ArrayList<>();
        Field<Text> field = labelled(
                form,
                () -> form.field(item.words(), parent -> {
                    picks.add(new PickField(parent, over, theme));
                    return picks.get(0).control();
                }));
        made.accept(picks.get(0));
        return new Slot(field, field.control(), picks.get(0)::value, picks.get(0)::put);
    }

    private void lineUp(List<Form> forms) {
        List<Control> some = forms.stream()
                .flatMap(form -> labels.getOrDefault(form, List.of()).stream())
                .toList();
        int widest = some.stream()
                .mapToInt(label -> label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x)
                .max()
                .orElse(0);
        some.forEach(label -> ((GridData) label.getLayoutData()).widthHint = widest);
    }

    /** Makes a field and remembers its label, which is the first that it puts into the form. */
    private <C extends Control> Field<C> labelled(Form form, Supplier<Field<C>> make) {
        int at = form.grid().getChildren().length;
        Field<C> made = make.get();
        labels.computeIfAbsent(form, first -> new ArrayList<>()).add(form.grid().getChildren()[at]);
        return made;
    }

    private static Slot slot(Field<?> field, Text text) {
        return new Slot(field, text, text::getText, text::setText);
    }

    private Form keep(int column, Form form) {
        columns.get(column).add(form);
        return form;
    }
}
