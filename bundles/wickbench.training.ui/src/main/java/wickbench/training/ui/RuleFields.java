package wickbench.training.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.training.Design;
import wickbench.training.PassRule;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;

/** How many mistakes of each kind pass, in the order of {@link PassRule}; what is left blank is as suggested. */
final class RuleFields {
    private static final List<String> KINDS = List.of("near", "clear", "without", "invalid", "window");

    private final List<Field<Text>> fields = new ArrayList<>();

    RuleFields(Composite room, Theme theme, Runnable changed) {
        Form form = new Form(room, theme);
        for (String kind : KINDS) {
            Field<Text> field = form.text(TrainingUiWords.get("rule." + kind));
            field.control().setTextLimit(3);
            field.control().addListener(SWT.Modify, event -> changed.run());
            fields.add(field);
        }
    }

    List<String> typed() {
        return fields.stream().map(field -> field.control().getText()).toList();
    }

    void type(List<String> typed) {
        for (int i = 0; i < fields.size(); i++) {
            fields.get(i).control().setText(typed.get(i));
        }
    }

    /** Returns what was typed, empty where a field is blank; nothing at all when a field is wrong. */
    Optional<List<Optional<Integer>>> allowed() {
        List<Optional<Integer>> allowed = new ArrayList<>();
        boolean good = true;
        for (Field<Text> field : fields) {
            boolean blank = field.control().getText().isBlank();
            Optional<Integer> count = blank ? Optional.empty() : count(field, Design.MOST);
            if (blank) {
                field.clear();
            }
            good &= blank || count.isPresent();
            allowed.add(count);
        }
        return good ? Optional.of(allowed) : Optional.empty();
    }

    /** Shows in blank fields what holds there. */
    void hint(PassRule rule) {
        List<Integer> held = List.of(
                rule.nearMissed(), rule.clearMissed(), rule.falseAlarms(), rule.invalidMissed(), rule.outsideWindow());
        for (int i = 0; i < fields.size(); i++) {
            fields.get(i).control().setMessage(String.valueOf(held.get(i)));
        }
    }

    /** Reads a count; a complaint stands at the field, the rest of the form is left alone. */
    static Optional<Integer> count(Field<Text> field, int most) {
        String text = field.control().getText().strip();
        if (text.matches("[0-9]{1,3}") && Integer.parseInt(text) <= most) {
            field.clear();
            return Optional.of(Integer.parseInt(text));
        }
        field.complain(TrainingUiWords.get("design.count", most));
        return Optional.empty();
    }
}
