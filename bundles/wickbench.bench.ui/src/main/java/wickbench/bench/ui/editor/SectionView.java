package wickbench.bench.ui.editor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The fields of one step of the editor. */
final class SectionView {
    private final Composite parent;
    private final Theme theme;
    private final Section section;
    private final Draft draft;
    private final List<EditSlot> slots = new ArrayList<>();
    private final Set<String> left = new HashSet<>();
    /** The field with the focus; a field that is being left may still say that it has it. */
    private String typing = "";

    private int rows;

    /** The draft, and who hears of it. */
    interface Draft {
        MethodText text();

        void put(MethodText text);

        MethodLook look();

        /** Makes the step anew, because rows came or went; the field at the path has the focus then. */
        void again(String focus);

        /** Says which version the method would be. */
        String versionWords();

        void grown();
    }

    SectionView(Composite parent, Theme theme, Section section, Draft draft) {
        this.parent = parent;
        this.theme = theme;
        this.section = section;
        this.draft = draft;
        theme.controls().text(parent, Type.BODY, section.line());
        if (!section.asks().isEmpty()) {
            Form form = new Form(Fit.wide(theme.controls().card(parent, 1)), theme);
            section.asks().forEach(ask -> add(form, ask, ask.path()));
        }
        section.rows().ifPresent(this::rows);
        apply();
    }

    private void add(Form form, Ask ask, String path) {
        EditSlot slot = EditSlot.make(form, theme, ask, path, draft.text().text(path));
        slots.add(slot);
        slot.listen(() -> changed(slot), () -> typing = path, () -> {
            typing = "";
            left.add(path);
            tell();
        });
    }

    private void changed(EditSlot slot) {
        draft.put(draft.text().with(slot.path(), slot.read().get()));
        apply();
        tell();
    }

    /** Greys what a strip of the chosen format does not have. */
    private void apply() {
        for (EditSlot slot : slots) {
            slot.control().setEnabled(Applies.to(slot.path(), draft.text()));
        }
    }

    private void rows(Section.Rows of) {
        Composite list = Fit.wide(theme.controls().box(parent, 1));
        rows = draft.text().rows(of.path());
        for (int i = 0; i < rows; i++) {
            row(list, of, i);
        }
        theme.controls().button(parent, EditorWords.get("add." + of.path()), () -> {
            row(list, of, rows);
            draft.grown();
            control(of.path() + "[" + rows + "]." + of.asks().get(0).path()).ifPresent(Control::setFocus);
            rows++;
        });
    }

    private void row(Composite list, Section.Rows of, int number) {
        Composite card = Fit.wide(theme.controls().card(list, 1));
        Composite head = Fit.wide(theme.controls().box(card, 4));
        Fit.wide(theme.controls().label(head, Type.STRONG, EditorWords.get("row." + of.path(), number + 1)));
        Button up = theme.controls().buttonOfMany(head, EditorWords.get("row.up"), () -> swap(of, number, number - 1));
        up.setEnabled(number > 0);
        Button down =
                theme.controls().buttonOfMany(head, EditorWords.get("row.down"), () -> swap(of, number, number + 1));
        down.setEnabled(number + 1 < draft.text().rows(of.path()));
        theme.controls().buttonOfMany(head, EditorWords.get("row.remove"), () -> {
            draft.put(draft.text().without(of.path(), number));
            draft.again("");
        });
        Form form = new Form(card, theme);
        of.asks().forEach(ask -> add(form, ask, of.path() + "[" + number + "]." + ask.path()));
    }

    private void swap(Section.Rows of, int one, int other) {
        draft.put(draft.text().swapped(of.path(), one, other));
        draft.again(of.path() + "[" + other + "]." + of.asks().get(0).path());
    }

    /** Says below each field that was left what is wrong with it, but not into the words of someone still typing. */
    void tell() {
        MethodLook look = draft.look();
        boolean grown = false;
        for (EditSlot slot : slots) {
            String before = slot.field().said();
            boolean quiet = !left.contains(slot.path())
                    || slot.path().equals(typing)
                    || !slot.control().isEnabled();
            slot.say(
                    quiet ? "" : look.of(slot.path()).orElse(""), slot.path().equals("id") ? draft.versionWords() : "");
            grown |= !before.equals(slot.field().said());
        }
        if (grown) {
            draft.grown();
        }
    }

    /** Tells of every field, for the step is left or come back to. */
    void tellAll() {
        slots.forEach(slot -> left.add(slot.path()));
        tell();
    }

    Optional<Control> control(String path) {
        return slots.stream()
                .filter(slot -> Section.near(slot.path(), path))
                .findFirst()
                .map(EditSlot::control);
    }

    Optional<String> said(String path) {
        return slots.stream()
                .filter(slot -> slot.path().equals(path))
                .findFirst()
                .map(slot -> slot.field().said());
    }

    void focus() {
        slots.stream().findFirst().ifPresent(slot -> slot.control().setFocus());
    }
}
