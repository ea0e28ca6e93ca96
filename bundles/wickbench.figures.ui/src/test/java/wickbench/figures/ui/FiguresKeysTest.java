package wickbench.figures.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.shell.PagePart;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The page by keys alone, as they come through the display. */
class FiguresKeysTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private Keyboard keys;
    private PagePart part;

    @BeforeEach
    void open() {
        house = new TestHouse(folder.resolve("home"));
        desk = new TestDesk(false, 100, 1280, 860, Optional.of(new PersonId("qa-01")));
        keys = new Keyboard(desk);
        part = desk.open(parent -> house.page().open(parent, desk));
        desk.shell().forceActive();
        part.shown();
        desk.settle();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void chooses_a_sum_fills_it_and_keeps_it() {
        Tree tree = first(Tree.class);
        assertThat(desk.shell().getDisplay().getFocusControl()).isSameAs(tree);
        keys.key(SWT.ARROW_DOWN);
        awaitWords("Nothing was found");
        keys.tab();
        keys.key(SWT.END);
        keys.type("0");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("After 200 clean samples")));
        Text about = texts().get(texts().size() - 1);
        while (desk.shell().getDisplay().getFocusControl() != about) {
            keys.tab();
        }
        keys.type("line 2");
        keys.tab();
        keys.type(" ");
        desk.await(() -> house.kept().newest(1).size() == 1);
        assertThat(house.kept().newest(1).get(0).what().about()).contains("line 2");
    }

    @Test
    void types_a_table_cell_by_cell() {
        part.show("demand");
        awaitWords("Demand of each period");
        TableCursor cursor = first(TableCursor.class);
        Table table = first(Table.class);
        cursor.setFocus();
        cursor.setSelection(0, 1);
        keys.type("7");
        keys.enter();
        keys.type("8");
        keys.enter();
        desk.await(() -> table.getItem(0).getText(1).equals("7")
                && table.getItem(1).getText(1).equals("8"));
        assertThat(cursor.getRow()).isSameAs(table.getItem(2));
        keys.key(SWT.DEL);
        desk.await(() -> table.getItem(2).getText(1).isEmpty());
        keys.type("9");
        keys.key(SWT.ESC);
        assertThat(table.getItem(2).getText(1)).isEmpty();
        keys.key(SWT.ARROW_DOWN);
        assertThat(cursor.getRow()).isSameAs(table.getItem(3));
    }

    private void awaitWords(String text) {
        desk.await(() -> words().contains(text));
    }

    private List<String> words() {
        return find(Label.class, desk.shell()).stream().map(Label::getText).toList();
    }

    private List<Text> texts() {
        return find(Text.class, desk.shell());
    }

    private <C extends Control> C first(Class<C> type) {
        return find(type, desk.shell()).get(0);
    }

    private static <C extends Control> List<C> find(Class<C> type, Composite parent) {
        List<C> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(find(type, composite));
            }
        }
        return found;
    }
}
