package wickbench.training.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.person.PersonId;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The page in a window, and a person before it. */
final class TrainingWindow implements AutoCloseable {
    final TestDesk desk;
    final Keyboard keys;
    final TrainingPart part;

    TrainingWindow(TestHouse house, boolean dark, int percent, Optional<PersonId> actor) {
        desk = new TestDesk(dark, percent, 1024, 700, actor);
        keys = new Keyboard(desk);
        part = desk.open(parent -> new TrainingPart(parent, desk, house.doors()));
    }

    <C extends Control> List<C> all(Class<C> type) {
        return all(type, desk.shell());
    }

    /** The window over the page, such as a sheet to sign. */
    Shell sheet() {
        desk.await(() -> desk.shell().getShells().length == 1);
        return desk.shell().getShells()[0];
    }

    void awaitWords(String words) {
        desk.await(() -> words().stream().anyMatch(text -> text.contains(words)));
    }

    List<String> words() {
        return all(Label.class).stream()
                .map(label -> label.getText().replace("&", ""))
                .toList();
    }

    Button button(String words) {
        return button(words, desk.shell());
    }

    static Button button(String words, Composite within) {
        return all(Button.class, within).stream()
                .filter(button -> button.getText().replace("&", "").equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words + " among "
                        + all(Button.class, within).stream()
                                .map(Button::getText)
                                .toList()));
    }

    static void press(Button button) {
        button.notifyListeners(SWT.Selection, new Event());
    }

    /** The field that stands behind a label. */
    Text field(String label) {
        for (Text field : all(Text.class)) {
            Control[] row = field.getParent().getChildren();
            int at = Arrays.asList(row).indexOf(field);
            if (at > 0 && row[at - 1] instanceof Label words && words.getText().equals(label)) {
                return field;
            }
        }
        throw new AssertionError("no field " + label);
    }

    static List<Text> fields(Composite within) {
        return all(Text.class, within);
    }

    static <C extends Control> List<C> all(Class<C> type, Composite within) {
        List<C> found = new ArrayList<>();
        Arrays.stream(within.getChildren()).forEach(child -> {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(type, inner));
            }
        });
        return found;
    }

    @Override
    public void close() {
        desk.close();
    }
}
