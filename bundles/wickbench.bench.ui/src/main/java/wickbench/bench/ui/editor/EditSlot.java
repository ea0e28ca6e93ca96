package wickbench.bench.ui.editor;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/**
 * A field on the screen.
 *
 * @param path where its value stands in the document
 */
record EditSlot(String path, Field<?> field, Control control, Supplier<String> read) {
    private static final int PROSE = 46;
    private static final int LINES = 92;

    static EditSlot make(Form form, Theme theme, Ask ask, String path, String value) {
        return switch (ask.kind()) {
            case CHOICE -> choice(form, ask, path, value);
            case PROSE -> area(form, theme, ask, path, value, PROSE);
            case LINES -> area(form, theme, ask, path, value, LINES);
            default -> line(form, ask, path, value);
        };
    }

    private static EditSlot line(Form form, Ask ask, String path, String value) {
        Field<Text> field = form.text(ask.words());
        Text text = field.control();
        text.setText(value);
        if (ask.kind() == Ask.Kind.SPAN) {
            text.setMessage(EditorWords.get("message.span"));
        }
        return new EditSlot(path, field, text, text::getText);
    }

    private static EditSlot area(Form form, Theme theme, Ask ask, String path, String value, int height) {
        Field<Text> field = form.field(ask.words(), theme.controls()::area);
        Text text = field.control();
        ((GridData) text.getLayoutData()).heightHint = theme.px(height);
        text.setText(value);
        // a tab goes to the next field, as everywhere
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
        return new EditSlot(path, field, text, text::getText);
    }

    private static EditSlot choice(Form form, Ask ask, String path, String value) {
        List<Ask.Option> options = ask.options();
        List<String> words = options.stream().map(Ask.Option::words).toList();
        Field<Combo> field = form.choice(
                ask.words(),
                java.util.stream.Stream.concat(
                                java.util.stream.Stream.of(EditorWords.get("choice.none")), words.stream())
                        .toList());
        Combo combo = field.control();
        combo.select(1
                + IntStream.range(0, options.size())
                        .filter(at -> options.get(at).code().equals(value))
                        .findFirst()
                        .orElse(-1));
        return new EditSlot(
                path,
                field,
                combo,
                () -> combo.getSelectionIndex() <= 0
                        ? ""
                        : options.get(combo.getSelectionIndex() - 1).code());
    }

    /** Hears of each change, and of the field being come to and left. */
    void listen(Runnable changed, Runnable entered, Runnable left) {
        control.addListener(control instanceof Combo ? SWT.Selection : SWT.Modify, event -> changed.run());
        control.addListener(SWT.FocusIn, event -> entered.run());
        control.addListener(SWT.FocusOut, event -> left.run());
    }

    /** Says what is wrong, else what is good to know. */
    void say(String complaint, String hint) {
        String words = complaint.isEmpty() ? hint : complaint;
        if (field.said().equals(words)) {
            return;
        }
        if (!complaint.isEmpty()) {
            field.complain(complaint);
        } else if (hint.isEmpty()) {
            field.clear();
        } else {
            field.hint(hint);
        }
    }
}
