package wickbench.figures.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.figures.NoAnswer;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/** The fields of one sum. */
final class SumForm {
    /** Numbers are short; wider fields would only lead the eye astray. */
    private static final int WIDTH = 560;

    private final Map<String, Field<Text>> fields = new LinkedHashMap<>();

    SumForm(Composite parent, Theme theme, Sum sum, Map<String, String> typed, Runnable changed) {
        Form form = new Form(parent, theme);
        Fit.width(form.grid(), theme.px(WIDTH));
        for (Sum.Input input : sum.inputs()) {
            Field<Text> field = form.text(FiguresUiWords.get("input." + input.name()));
            field.control().setText(typed.getOrDefault(input.name(), input.first()));
            field.control().addListener(SWT.Modify, event -> changed.run());
            fields.put(input.name(), field);
        }
    }

    Map<String, String> typed() {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.forEach((name, field) -> texts.put(name, field.control().getText()));
        return texts;
    }

    /** Says at its field what is wrong; returns whether there is such a field. */
    boolean complain(NoAnswer none) {
        Field<Text> field = fields.get(none.field());
        if (field != null) {
            field.complain(none.text());
        }
        return field != null;
    }

    void clear() {
        fields.values().forEach(Field::clear);
    }
}
