package wickbench.figures.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Remark;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.shell.PagePart;
import wickbench.testing.ui.TestDesk;

/** The page in a real window; its figures are those of the sums, held elsewhere. */
class FiguresPageTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    /** 59 clean samples for 5 % with 95 %: a textbook value, from memory. */
    @Test
    void shows_a_first_sum_with_its_answer_in_words() throws IOException {
        open(false);
        awaitWords("59 random samples, all of them clean, show with 95 % confidence that fewer than 5 % are faulty.");
        assertThat(words()).anyMatch(text -> text.startsWith("For random samples only"));
        desk.picture("figures-light");
    }

    static Stream<String> sums() {
        return Sums.all().stream().map(Sum::id);
    }

    @ParameterizedTest
    @MethodSource("sums")
    void every_sum_shows_the_answer_that_its_command_gives(String id) throws IOException {
        PagePart part = open(id.length() % 2 == 0);
        part.show(id);
        Sum sum = Sums.find(id).orElseThrow();
        Answer answer = ((Reckoned.Done) sum.reckon(sum.asked(sum.example()))).answer();
        answer.remarks().forEach(remark -> awaitWords(remark.text()));
        assertThat(answer.said(Remark.Kind.FORMULA)).isNotEmpty();
        desk.picture("sum-" + id);
    }

    @Test
    void says_at_the_field_what_is_wrong_and_gives_no_number() throws IOException {
        open(false);
        Text prevalence = find(Text.class).get(0);
        prevalence.setText("2");
        desk.await(() -> words().stream().anyMatch(text -> text.contains("expected a number from")));
        assertThat(words()).noneMatch(text -> text.startsWith("59 "));
        prevalence.setText("many");
        desk.await(() -> words().stream().anyMatch(text -> text.contains("found 'many'")));
        desk.picture("figures-refused");
        prevalence.setText("0,05");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("59 ")));
    }

    @Test
    void says_below_a_table_which_row_is_wrong() throws IOException {
        PagePart part = open(false);
        part.show("detection");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("Half of the tests")));
        Table table = find(Table.class).get(0);
        assertThat(table.getItem(2).getText(3)).isEqualTo("10");
        TableCursor cursor = find(TableCursor.class).get(0);
        cursor.setSelection(2, 3);
        type(cursor, '9');
        Text cell = find(Text.class, cursor).get(0);
        assertThat(cell.getText()).isEqualTo("9");
        cell.setText("90");
        traverse(cell, SWT.TRAVERSE_RETURN);
        awaitWords("Row 3: positives: 90 is more than tests, which is 20");
        assertThat(cursor.getRow()).isSameAs(table.getItem(3));
        desk.picture("figures-row-refused");
    }

    @Test
    void a_choice_asks_for_other_inputs() {
        PagePart part = open(false);
        part.show("trend");
        awaitWords("Groups");
        Combo chart = find(Combo.class).get(0);
        chart.select(3);
        chart.notifyListeners(SWT.Selection, new Event());
        awaitWords("Where the process should be");
        desk.await(() -> words().stream().anyMatch(text -> text.contains("the sum upwards")));
        assertThat(words()).doesNotContain("Groups");
    }

    @Test
    void takes_a_block_from_a_spreadsheet_and_a_file() throws IOException {
        PagePart part = open(false);
        part.show("laboratories");
        awaitWords("Laboratories");
        Clipboard clipboard = new Clipboard(desk.shell().getDisplay());
        clipboard.setContents(
                new Object[] {"tests\tpositives\n12\t7\n12\t9\n12\t6"}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        press(find(TableCursor.class).get(0), 'v', SWT.MOD1);
        Table table = find(Table.class).get(0);
        desk.await(() -> table.getItemCount() == 4);
        assertThat(table.getItem(0).getText(1)).isEqualTo("7");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("3 laboratories")));
    }

    @Test
    void keeps_a_sum_under_who_has_signed_in_and_opens_it_again() throws IOException {
        open(false);
        Text prevalence = find(Text.class).get(0);
        prevalence.setText("0.01");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("299 ")));
        Button keep = button("Keep as an entry");
        assertThat(keep.isEnabled()).isFalse();
        desk.signIn(new PersonId("qa-01"));
        desk.await(keep::isEnabled);
        Text about = find(Text.class).get(find(Text.class).size() - 1);
        about.setText("Bar line, annual plan");
        keep.notifyListeners(SWT.Selection, new Event());
        desk.await(() -> house.kept().newest(1).size() == 1);
        KeptSums.Kept kept = house.kept().newest(1).get(0);
        assertThat(kept.by()).isEqualTo(new PersonId("qa-01"));
        assertThat(kept.what().about()).contains("Bar line, annual plan");
        assertThat(kept.what().given().texts()).containsEntry("prevalence", "0.01");
        awaitWords("Kept before");
        desk.picture("figures-kept");
        prevalence.setText("0.5");
        Table list = find(Table.class).get(find(Table.class).size() - 1);
        list.setSelection(0);
        list.notifyListeners(SWT.DefaultSelection, new Event());
        desk.await(() -> find(Text.class).get(0).getText().equals("0.01"));
    }

    @Test
    void carries_what_was_typed_over_to_a_new_look() {
        PagePart part = open(false);
        find(Text.class).get(0).setText("0.01");
        desk.await(() -> words().stream().anyMatch(text -> text.startsWith("299 ")));
        PagePart next = desk.open(parent -> house.page().open(parent, desk));
        next.restore(part.draft().orElseThrow());
        desk.await(() -> find(Text.class).stream()
                        .filter(field -> field.getText().equals("0.01"))
                        .count()
                == 2);
    }

    @Test
    void lists_each_sum_below_its_question() {
        open(false);
        Tree tree = find(Tree.class).get(0);
        assertThat(tree.getItemCount()).isEqualTo(8);
        assertThat(Stream.of(tree.getItems())
                        .mapToInt(item -> item.getItemCount())
                        .sum())
                .isEqualTo(Sums.all().size());
        assertThat(tree.getSelection()[0].getText()).isEqualTo("How many clean samples");
    }

    @Test
    void opens_a_table_from_a_file_or_says_why_not() throws IOException {
        house = new TestHouse(folder.resolve("home"));
        desk = new TestDesk(false, 100, 800, 600, Optional.empty());
        List<Boolean> changes = new ArrayList<>();
        CellTable table = new CellTable(desk.shell(), desk, "Demand", List.of("demand"), () -> changes.add(true));
        table.open(Files.writeString(folder.resolve("demand.csv"), "week;demand\n1;0\n2;5\n"));
        desk.await(() -> changes.size() == 1);
        assertThat(table.text().lines()).hasSize(2);
        assertThat(table.text().lines().get(1).cells()).containsExactly("5");
        table.open(folder.resolve("absent.csv"));
        awaitWords("absent.csv cannot be read, or is too large for a table.");
        table.open(Files.write(folder.resolve("latin.csv"), new byte[] {(byte) 0xE9, '\n'}));
        awaitWords("latin.csv: is not UTF-8 text; save the table as CSV in UTF-8");
        assertThat(table.text().lines()).hasSize(2);
    }

    private PagePart open(boolean dark) {
        house = new TestHouse(folder.resolve("home"));
        desk = new TestDesk(dark, 100, 1280, 860, Optional.empty());
        return desk.open(parent -> house.page().open(parent, desk));
    }

    private void awaitWords(String text) {
        desk.await(() -> words().contains(text.replace("&", "&&")) || words().contains(text));
    }

    private List<String> words() {
        return find(Label.class).stream().map(Label::getText).toList();
    }

    private Button button(String words) {
        return find(Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static void type(Control control, char character) {
        Event event = new Event();
        event.character = character;
        event.keyCode = character;
        control.notifyListeners(SWT.KeyDown, event);
    }

    private static void press(Control control, int key, int mask) {
        Event event = new Event();
        event.keyCode = key;
        event.stateMask = mask;
        control.notifyListeners(SWT.KeyDown, event);
    }

    private static void traverse(Control control, int detail) {
        Event event = new Event();
        event.detail = detail;
        control.notifyListeners(SWT.Traverse, event);
    }

    private <C extends Control> List<C> find(Class<C> type) {
        return find(type, desk.shell());
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
