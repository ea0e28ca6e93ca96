package wickbench.parts.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Badge;

/** The page Parts over a real home and a real framework, in a real window. */
class PartsPageTest {
    @TempDir
    private Path folder;

    private PartsHouse house;
    private TestDesk desk;
    private PartsPart part;

    @BeforeEach
    void lay() throws Exception {
        house = new PartsHouse(folder);
    }

    @AfterEach
    void close() throws Exception {
        desk.close();
        house.close();
    }

    @Test
    void a_set_is_added_and_removed_by_who_may_and_stands_on_record() throws Exception {
        open(Optional.of(PartsHouse.ADA));
        assertThat(rows()).containsExactly("The base|Of the product", "Training|Not added");
        assertThat(words()).contains("To mind", "Only 900 MiB are free where the home lies; make room soon.");
        assertThat(button("Remove").isEnabled()).isFalse();

        select(1);
        press(button("Add"));
        press(inSheet("Do it unsigned"));
        desk.await(() -> rows().contains("Training|Added"));
        assertThat(house.runs("training")).isTrue();
        assertThat(desk.progress())
                .as("what was recorded is taken in")
                .anyMatch(told -> told.startsWith("Add Training 0.1.0: "));

        select(1);
        press(button("Remove"));
        press(inSheet("Do it unsigned"));
        desk.await(() -> rows().contains("Training|Not added"));
        assertThat(house.runs("training")).isFalse();
        assertThat(house.kinds()).contains("part.added", "part.removed");

        press("Verify…", house.signed(folder, "0.2.0"));
        desk.await(() -> words().stream().anyMatch(word -> word.contains("signed by site")));
        assertThat(house.runs("training")).isFalse();
        press("Add…", house.signed(folder, "0.2.0"));
        press(inSheet("Do it unsigned"));
        desk.await(() -> rows().contains("Training|Added"));

        press("Add…", house.signed(folder, "0.1.5"));
        desk.await(() -> words().stream().anyMatch(word -> word.contains("a step back is not taken")));
        press("Verify…", Files.writeString(folder.resolve("odd.zip"), "odd"));
        desk.await(() -> words().stream().anyMatch(word -> word.contains("is no zip of plain files")));
    }

    @Test
    void who_may_not_change_sets_sees_why() throws Exception {
        open(Optional.of(PartsHouse.BO));
        select(1);
        assertThat(button("Add").isEnabled()).isFalse();
        assertThat(button("Add…").isEnabled()).isFalse();
        assertThat(words()).anyMatch(word -> word.contains("administrator"));
        desk.signIn(PartsHouse.ADA);
        desk.await(() -> button("Add…").isEnabled());
    }

    private void open(Optional<wickbench.api.person.PersonId> actor) {
        desk = new TestDesk(false, 100, 1100, 800, actor);
        part = desk.open(parent -> new PartsPart(parent, desk, house.doors()));
        desk.await(() -> !rows().isEmpty());
    }

    private void select(int row) {
        Table table = all(part.page(), Table.class).get(0);
        table.setSelection(row);
        table.notifyListeners(org.eclipse.swt.SWT.Selection, new Event());
        desk.settle();
    }

    private void press(Button button) {
        button.notifyListeners(org.eclipse.swt.SWT.Selection, new Event());
    }

    private void press(String verb, Path file) {
        desk.answer(file);
        press(button(verb));
    }

    private Button inSheet(String verb) {
        desk.await(() -> desk.shell().getShells().length > 0);
        Shell sheet = desk.shell().getShells()[0];
        return find(sheet, verb);
    }

    private Button button(String verb) {
        return find(part.page(), verb);
    }

    private static Button find(Composite box, String verb) {
        return all(box, Button.class).stream()
                .filter(each -> each.getText().replace("&", "").equals(verb))
                .findFirst()
                .orElseThrow();
    }

    private List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (TableItem item : all(part.page(), Table.class).get(0).getItems()) {
            rows.add(item.getText(0) + "|" + item.getText(1));
        }
        return rows;
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        all(part.page(), Label.class).forEach(label -> words.add(label.getText()));
        all(part.page(), Badge.class).forEach(badge -> words.add(badge.shown().word()));
        return words;
    }

    private static <C extends Control> List<C> all(Composite box, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : box.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, type));
            }
        }
        return found;
    }
}
