package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableKitTest {
    record Lot(int number, String kit) {}

    private static final List<Column<Lot>> COLUMNS = List.of(
            Column.of("number", "Lot", 80, lot -> "L-" + lot.number()),
            Column.of("kit", "Kit", 120, Lot::kit),
            Column.of("note", "Note", 120, (Lot lot) -> "=" + lot.number()).hidden());

    private final Ui ui = new Ui();

    @AfterEach
    void closeWindow() {
        ui.close();
    }

    @Test
    void filtersByWhatStandsInTheBox() {
        TableKit<Lot> kit = open(30);
        kit.filter("l-1");
        ui.await(() -> kit.rows().size() == 11);
        assertThat(kit.rows()).allMatch(lot -> ("L-" + lot.number()).startsWith("L-1"));
    }

    @Test
    void sortsByAClickOnTheHeadAndBackByASecond() {
        TableKit<Lot> kit = open(30);
        table(kit).getColumn(0).notifyListeners(SWT.Selection, new Event());
        ui.await(() -> table(kit).getSortDirection() == SWT.UP && first(kit) == 0);
        table(kit).getColumn(0).notifyListeners(SWT.Selection, new Event());
        ui.await(() -> table(kit).getSortDirection() == SWT.DOWN && first(kit) == 29);
    }

    @Test
    void sortsFromItsMenuSoThatNoMouseIsNeeded() {
        TableKit<Lot> kit = open(30);
        Menu menu = table(kit).getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        Menu sort = item(menu, "Sort by").getMenu();
        MenuItem byKit = item(sort, "Kit");
        byKit.setSelection(true);
        byKit.notifyListeners(SWT.Selection, new Event());
        ui.await(() -> kit.rows().get(0).kit().equals("kit 0")
                && kit.rows().get(1).kit().equals("kit 0"));
    }

    @Test
    void copiesTheSelectedRowsInShownColumns() {
        TableKit<Lot> kit = open(5);
        table(kit).setSelection(new int[] {1, 3});
        ui.press(table(kit), 'c', 'c', SWT.MOD1);
        Clipboard clipboard = new Clipboard(ui.shell().getDisplay());
        assertThat(clipboard.getContents(TextTransfer.getInstance())).isEqualTo("L-1\tkit 1\nL-3\tkit 0");
        clipboard.dispose();
    }

    @Test
    void exportsAllRowsThatPassTheFilterAndKeepsFormulasOut(@TempDir Path folder) throws IOException {
        TableKit<Lot> kit = open(1500);
        kit.toggleColumn("note");
        kit.toggleColumn("kit");
        Path file = folder.resolve("lots.csv");
        Job job = kit.export(file);
        ui.await(() -> !job.running());
        List<String> lines = Files.readAllLines(file);
        assertThat(lines).hasSize(1501);
        assertThat(lines.get(0)).endsWith("Lot,Note");
        assertThat(lines.get(1500)).isEqualTo("L-1499,'=1499");
        assertThat(Files.readString(file)).contains("\r\n");
    }

    @Test
    void readsOnAsOneScrollsAndHoldsAWindowOnly() {
        TableKit<Lot> kit = open(3000);
        assertThat(kit.rows()).hasSize(RowWindow.SLICE);
        for (int more = 0; more < 14; more++) {
            int last = last(kit);
            scrollToEnd(kit);
            ui.await(() -> last(kit) > last);
        }
        assertThat(last(kit)).isEqualTo(2999);
        assertThat(table(kit).getItemCount()).isEqualTo(RowWindow.SLICE * RowWindow.SLICES);
        assertThat(first(kit)).isEqualTo(1000);
        table(kit).setTopIndex(0);
        ui.press(table(kit), SWT.HOME, (char) 0, SWT.NONE);
        ui.await(() -> first(kit) == 800);
        assertThat(table(kit).getItem(0).getText(0)).isEqualTo("L-800");
    }

    @Test
    void remembersColumnsAndOrderUntilItIsReset() {
        TableKit<Lot> kit = open(5);
        kit.toggleColumn("kit");
        kit.sortBy("number");
        ui.await(() -> ui.recall("table.lots").isPresent());
        kit.control().dispose();

        TableKit<Lot> again = make(5);
        assertThat(table(again).getColumn(1).getWidth()).isZero();
        assertThat(table(again).getSortColumn()).isEqualTo(table(again).getColumn(0));
        again.resetLayout();
        assertThat(table(again).getColumn(1).getWidth()).isEqualTo(120);
        assertThat(ui.recall("table.lots")).isEmpty();
    }

    @Test
    void makesRoomForItsWordsAndLeavesAloneWhatAPersonNarrowed() {
        Column<Lot> wide = Column.of("wide", "A head much wider than its column", 40, lot -> "x");
        Column<Lot> told = Column.of("told", "Told", 60, lot -> "what was told of the lot, at length");
        TableKit<Lot> kit = open(List.of(wide, told), 3);
        Table table = table(kit);
        assertThat(table.getColumn(0).getWidth()).isGreaterThanOrEqualTo(packed(table, 0));
        assertThat(table.getColumn(1).getWidth()).isGreaterThanOrEqualTo(packed(table, 1));
        assertThat(ui.recall("table.lots")).as("nobody changed anything").isEmpty();
        table.getColumn(1).setWidth(50);
        ui.await(() -> ui.recall("table.lots").isPresent());
        kit.reload();
        ui.await(() -> kit.rows().size() == 3);
        assertThat(table.getColumn(1).getWidth()).isEqualTo(50);
    }

    @Test
    void saysHowManyColumnsStandOutOfSight() {
        List<Column<Lot>> many = IntStream.range(0, 24)
                .mapToObj(i -> Column.<Lot>of("c" + i, "Column " + i, 200, Lot::kit))
                .toList();
        TableKit<Lot> kit = open(many, 3);
        Table table = table(kit);
        int edge = 0;
        int beyond = 0;
        for (int i = 0; i < many.size(); i++) {
            edge += table.getColumn(i).getWidth();
            beyond += edge > table.getClientArea().width ? 1 : 0;
        }
        assertThat(beyond).isGreaterThan(1);
        String said = "\u00b7 " + beyond + " more columns \u2192";
        ui.await(() -> words(kit.control()).contains(said));
    }

    private static int packed(Table table, int column) {
        int before = table.getColumn(column).getWidth();
        table.getColumn(column).pack();
        int packed = table.getColumn(column).getWidth();
        table.getColumn(column).setWidth(before);
        return packed;
    }

    private static List<String> words(Composite in) {
        List<String> words = new ArrayList<>();
        for (Control child : in.getChildren()) {
            if (child instanceof Label label) {
                words.add(label.getText());
            } else if (child instanceof Composite box) {
                words.addAll(words(box));
            }
        }
        return words;
    }

    private TableKit<Lot> open(List<Column<Lot>> columns, int lots) {
        TableKit<Lot> kit = make(columns, lots);
        ui.open();
        ui.await(() -> kit.rows().size() == lots);
        return kit;
    }

    @Test
    void keepsTheSelectionOverAReload() {
        TableKit<Lot> kit = open(30);
        List<List<Lot>> heard = new ArrayList<>();
        kit.onSelect(heard::add);
        assertThat(kit.select(new Lot(7, "kit 1"))).isTrue();
        kit.sortBy("number");
        kit.sortBy("number");
        ui.await(() -> first(kit) == 29);
        assertThat(kit.selected()).containsExactly(new Lot(7, "kit 1"));
        assertThat(heard).containsExactly(List.of(new Lot(7, "kit 1")));
    }

    @Test
    void a_table_without_rows_says_so_in_words_and_says_why() {
        TableKit<Lot> kit = open(0);
        ui.await(() -> words(kit).contains("No lot yet."));
        TableKit<Lot> some = open(3);
        assertThat(words(some)).doesNotContain("No lot yet.");
        some.filter("nothing like it");
        ui.await(() -> words(some).stream().anyMatch(word -> word.contains("nothing like it")));
        some.filter("");
        ui.await(() -> words(some).stream().noneMatch(word -> word.contains("nothing like it")));
    }

    /** Returns what stands above a table and can be seen. */
    private static List<String> words(TableKit<Lot> kit) {
        return Arrays.stream(kit.control().getChildren())
                .filter(child -> child instanceof Label && child.getVisible())
                .map(child -> ((Label) child).getText())
                .toList();
    }

    private TableKit<Lot> open(int lots) {
        TableKit<Lot> kit = make(lots);
        ui.open();
        ui.await(() -> kit.rows().size() == Math.min(lots, RowWindow.SLICE));
        return kit;
    }

    private TableKit<Lot> make(int lots) {
        return make(COLUMNS, lots);
    }

    private TableKit<Lot> make(List<Column<Lot>> columns, int lots) {
        List<Lot> rows = IntStream.range(0, lots)
                .mapToObj(i -> new Lot(i, "kit " + i % 3))
                .toList();
        return new TableKit<>(
                ui.shell(),
                ui,
                new TableSpec<>("lots", "Lots", columns, RowSource.of(rows, columns), Optional.empty(), "No lot yet."));
    }

    private void scrollToEnd(TableKit<Lot> kit) {
        table(kit).setTopIndex(table(kit).getItemCount() - 1);
        ui.press(table(kit), SWT.END, (char) 0, SWT.NONE);
    }

    private static int first(TableKit<Lot> kit) {
        return kit.rows().get(0).number();
    }

    private static int last(TableKit<Lot> kit) {
        return kit.rows().get(kit.rows().size() - 1).number();
    }

    private static Table table(TableKit<?> kit) {
        for (Control child : kit.control().getChildren()) {
            if (child instanceof Table table) {
                return table;
            }
        }
        throw new AssertionError("no table");
    }

    private static MenuItem item(Menu menu, String words) {
        for (MenuItem item : menu.getItems()) {
            if (item.getText().replace("&", "").startsWith(words)) {
                return item;
            }
        }
        throw new AssertionError("no item " + words);
    }
}
