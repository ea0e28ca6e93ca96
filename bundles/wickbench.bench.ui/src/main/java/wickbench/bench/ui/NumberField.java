package wickbench.bench.ui;

import java.util.OptionalInt;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Where the number written on a strip is typed; Enter confirms it, and Space is not for it. */
final class NumberField {
    private static final int WIDTH = 96;
    private static final int MOST_DIGITS = 4;

    private final Text text;

    NumberField(Composite parent, Theme theme, IntConsumer confirmed, Runnable space) {
        text = theme.controls().field(parent);
        text.setFont(theme.font(Type.LARGE));
        text.setTextLimit(MOST_DIGITS);
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = theme.px(WIDTH);
        text.setLayoutData(data);
        Names.give(text, () -> FlowWords.get("number.label"));
        text.addListener(SWT.Verify, event -> {
            if (event.text.equals(" ")) {
                space.run();
            }
            event.doit = event.text.chars().allMatch(Character::isDigit);
        });
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN) {
                event.doit = false;
                typed().ifPresent(confirmed);
            }
        });
    }

    /** Returns the number that stands there, not confirmed yet. */
    OptionalInt typed() {
        return text.getText().isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text.getText()));
    }

    void clear() {
        text.setText("");
    }

    void focus() {
        text.setFocus();
        text.selectAll();
    }
}
