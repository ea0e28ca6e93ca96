package wickbench.figures.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.check.BadInput;
import wickbench.figures.sums.KeptSum;
import wickbench.figures.sums.TableText;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A table to type, to paste from a spreadsheet, or to open from a file; read as the commands read theirs. */
final class CellTable {
    private final PageContext context;
    private final Theme theme;
    private final List<String> columns;
    private final CellGrid grid;
    private final Label complaint;
    private final Runnable changed;

    CellTable(Composite parent, PageContext context, String label, List<String> columns, Runnable changed) {
        this.context = context;
        this.columns = columns;
        this.changed = changed;
        theme = context.theme();
        Fit.wide(theme.controls().text(parent, Type.BODY, label));
        grid = new CellGrid(parent, theme, label, columns, changed, this::paste);
        complaint = Fit.wide(theme.controls().text(parent, Type.SMALL, ""));
        complaint.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
        Composite row = theme.controls().row(parent);
        theme.controls().button(row, FiguresUiWords.get("table.open"), this::open);
        theme.controls().button(row, FiguresUiWords.get("table.paste"), this::paste);
        theme.controls().button(row, FiguresUiWords.get("table.clear"), () -> {
            grid.fill(List.of());
            changed.run();
        });
        clear();
    }

    /** Returns what was typed, row for row. */
    TableText text() {
        return TableText.ofRows("", grid.rows());
    }

    /** Shows a table; where its header names the columns, in their order. */
    void fill(TableText table) {
        grid.fill(table.arranged(columns));
    }

    /** Says below the table what is wrong, and goes to the row. */
    void complain(String text, OptionalInt row) {
        say(text);
        row.ifPresent(grid::reveal);
    }

    void clear() {
        say("");
    }

    private void say(String text) {
        complaint.setText(text);
        complaint.setVisible(!text.isEmpty());
        ((GridData) complaint.getLayoutData()).exclude = text.isEmpty();
        complaint.requestLayout();
    }

    private void paste() {
        Clipboard clipboard = new Clipboard(theme.display());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        if (text instanceof String some) {
            take(() -> TableText.of("", some), table -> {
                if (table.isHeaded() || grid.isBlank()) {
                    fill(table);
                } else {
                    grid.put(table.arranged(List.of()));
                }
            });
        }
    }

    static void copy(Theme theme, String text) {
        Clipboard clipboard = new Clipboard(theme.display());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private void open() {
        context.files()
                .open(FiguresUiWords.get("table.choose"), "*.csv;*.tsv;*.txt", "*")
                .ifPresent(this::open);
    }

    /** Reads a file behind the screen and shows what is in it. */
    void open(Path file) {
        context.jobs()
                .run(
                        FiguresUiWords.get("table.reading"),
                        progress -> read(file),
                        bytes -> take(() -> TableText.of(file.getFileName().toString(), bytes), this::fill),
                        failure -> say(FiguresUiWords.get("table.unreadable", file.getFileName())));
    }

    private static byte[] read(Path file) throws IOException {
        if (Files.size(file) > TableText.LARGEST_BYTES) {
            throw new IOException("too large");
        }
        return Files.readAllBytes(file);
    }

    private void take(java.util.function.Supplier<TableText> read, java.util.function.Consumer<TableText> show) {
        try {
            TableText table = read.get();
            List<TableText.Line> lines = new ArrayList<>(table.lines());
            int cells = lines.stream().mapToInt(line -> line.cells().size()).sum();
            if (cells > KeptSum.MOST_CELLS) {
                say(FiguresUiWords.get("table.large", cells, KeptSum.MOST_CELLS));
                return;
            }
            show.accept(table);
            changed.run();
        } catch (BadInput bad) {
            say(bad.getMessage());
        }
    }
}
