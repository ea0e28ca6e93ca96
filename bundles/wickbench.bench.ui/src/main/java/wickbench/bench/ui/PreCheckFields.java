package wickbench.bench.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.words.Decimals;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/** A field for each measurement that the method asks of the sample, such as its pH. */
final class PreCheckFields {
    private final Composite box;
    private final Theme theme;
    private final Runnable changed;
    private final Map<String, Field<Text>> fields = new LinkedHashMap<>();
    private List<PreCheck> shown = List.of();

    PreCheckFields(Composite card, Theme theme, Runnable changed) {
        this.box = Fit.wide(theme.controls().box(card, 1));
        this.theme = theme;
        this.changed = changed;
        ((GridData) box.getLayoutData()).exclude = true;
    }

    void show(List<PreCheck> checks) {
        if (checks.equals(shown)) {
            return;
        }
        shown = checks;
        fields.clear();
        for (Control old : box.getChildren()) {
            old.dispose();
        }
        Form form = new Form(box, theme);
        checks.forEach(check -> fields.put(check.name(), field(form, check)));
        ((GridData) box.getLayoutData()).exclude = checks.isEmpty();
        box.requestLayout();
    }

    private Field<Text> field(Form form, PreCheck check) {
        Field<Text> field = form.text(BenchUiWords.get(
                "check.label",
                check.name(),
                Decimals.of(check.range().low()),
                Decimals.of(check.range().high()),
                check.range().unit().symbol()));
        field.control().addListener(SWT.Modify, event -> changed.run());
        return field;
    }

    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.forEach((name, field) -> texts.put(name, field.control().getText()));
        return texts;
    }

    void put(Map<String, String> texts) {
        fields.forEach((name, field) -> field.control().setText(texts.getOrDefault(name, "")));
    }

    void say(Map<String, String> complaints) {
        fields.forEach((name, field) ->
                new Slot(field, field.control(), () -> "", text -> {}).say(complaints.getOrDefault(name, ""), ""));
    }

    List<Text> controls() {
        return fields.values().stream().map(Field::control).toList();
    }
}
