package wickbench.training.ui;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.training.ui.CallRun.Phase;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.MinSec;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;

/** Every strip of a round in its order, with its state in words; only what has changed is written anew. */
final class CallTable {
    private static final int[] WIDTHS = {110, 220};

    private final Theme theme;
    private final Table table;

    CallTable(Composite parent, Theme theme, Consumer<String> chosen) {
        this.theme = theme;
        table = ThemedTable.plain(parent, theme, SWT.SINGLE | SWT.V_SCROLL, () -> TrainingUiWords.get("call.table"));
        for (int width : WIDTHS) {
            new TableColumn(table, SWT.LEFT).setWidth(theme.px(width));
        }
        table.addListener(SWT.Selection, event -> chosen.accept(((TableItem) event.item).getText(0)));
    }

    Table control() {
        return table;
    }

    void show(CallRun run, Instant now, Optional<String> current) {
        while (table.getItemCount() < run.codes().size()) {
            new TableItem(table, SWT.NONE);
        }
        for (int i = 0; i < run.codes().size(); i++) {
            String code = run.codes().get(i);
            TableItem item = table.getItem(i);
            put(item, 0, code);
            Mark mark = mark(run, code, now);
            put(item, 1, mark.word());
            Image image = theme.image(mark.shape(), mark.meaning());
            if (item.getImage(0) != image) {
                item.setImage(0, image);
            }
            boolean here = current.filter(code::equals).isPresent();
            if (here && table.getSelectionIndex() != i) {
                table.setSelection(i);
            }
        }
    }

    private static void put(TableItem item, int column, String words) {
        if (!item.getText(column).equals(words)) {
            item.setText(column, words);
        }
    }

    /** Returns the state of a strip: word with the time that matters, shape, colour. */
    static Mark mark(CallRun run, String code, Instant now) {
        Phase phase = run.phase(code, now);
        String time = phase == Phase.DEVELOPING || phase == Phase.OPEN ? MinSec.of(run.left(code, now)) : "";
        String word = TrainingUiWords.get("phase." + phase.code(), time);
        return switch (phase) {
            case WAITING -> new Mark(word, Shape.BAR, Meaning.NEUTRAL);
            case DEVELOPING -> new Mark(word, Shape.RING, Meaning.NEUTRAL);
            case OPEN -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case MISSED -> new Mark(word, Shape.CROSS, Meaning.CAUTION);
            case CALLED -> new Mark(word, Shape.DISC, Meaning.CALM);
        };
    }
}
