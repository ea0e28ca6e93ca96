package wickbench.bench.ui;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;
import wickbench.widgets.Meaning;
import wickbench.widgets.MinSec;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;
import wickbench.widgets.Type;

/** Every strip of the run with its state in words; only what has changed is written anew. */
final class RunTable {
    /** Number, state, label; the place takes what is left. */
    private static final int[] WIDTHS = {54, 190, 100, 100};

    private final Theme theme;
    private final Table table;

    RunTable(Composite parent, Theme theme) {
        this.theme = theme;
        table = ThemedTable.plain(parent, theme, SWT.SINGLE | SWT.V_SCROLL, () -> FlowWords.get("clock.table"));
        table.setFont(theme.font(Type.HEADING));
        for (int width : WIDTHS) {
            new TableColumn(table, SWT.LEFT).setWidth(theme.px(width));
        }
        table.addListener(SWT.Resize, event -> placeTakesTheRest());
    }

    private void placeTakesTheRest() {
        int others = Arrays.stream(WIDTHS, 0, 3).map(theme::px).sum();
        table.getColumn(3).setWidth(Math.max(theme.px(WIDTHS[3]), table.getClientArea().width - others));
    }

    Table control() {
        return table;
    }

    static String numbers(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    void show(RunState run, Moment now, Optional<Integer> next) {
        while (table.getItemCount() < run.strips().size()) {
            TableItem made = new TableItem(table, SWT.NONE);
            made.setFont(2, theme.font(Type.BODY));
            made.setFont(3, theme.font(Type.BODY));
        }
        while (table.getItemCount() > run.strips().size()) {
            table.getItem(table.getItemCount() - 1).dispose();
        }
        for (int i = 0; i < run.strips().size(); i++) {
            row(table.getItem(i), run.strips().get(i), now, next);
        }
    }

    private void row(TableItem item, StripState strip, Moment now, Optional<Integer> next) {
        Phase phase = strip.phase(now);
        boolean upNext = phase == Phase.WAITING
                && next.filter(number -> number == strip.number()).isPresent();
        put(item, 0, Integer.toString(strip.number()));
        put(item, 1, upNext ? FlowWords.get("state.next") : words(strip, now));
        put(item, 2, strip.strip().unread().sample().code());
        put(item, 3, strip.strip().unread().sample().place());
        Image image = theme.image(shape(phase), meaning(phase));
        if (item.getImage(0) != image) {
            item.setImage(0, image);
        }
    }

    private static void put(TableItem item, int column, String words) {
        if (!item.getText(column).equals(words)) {
            item.setText(column, words);
        }
    }

    /** Returns the state of a strip in words, with the time that matters. */
    static String words(StripState strip, Moment now) {
        Phase phase = strip.phase(now);
        String key = strip.preparation().underWay() && phase == Phase.WAITING ? "shaking" : phase.code();
        String time = switch (key) {
            case "shaking" ->
                MinSec.of(now.after(strip.preparation().from().orElseThrow()).span());
            case "developing", "open" -> MinSec.of(strip.left(now));
            default -> "";
        };
        String sure = strip.elapsed(now)
                        .filter(elapsed -> !elapsed.sure() && !phase.over())
                        .isPresent()
                ? " " + FlowWords.get("state.wall")
                : "";
        return FlowWords.get("state." + key, time) + sure;
    }

    private static Shape shape(Phase phase) {
        return switch (phase) {
            case WAITING, SKIPPED -> Shape.BAR;
            case DEVELOPING -> Shape.RING;
            case OPEN -> Shape.TRIANGLE;
            case MISSED -> Shape.CROSS;
            case LOOKING, SECOND -> Shape.DIAMOND;
            case KEPT -> Shape.SQUARE;
            case RECORDED -> Shape.DISC;
        };
    }

    private static Meaning meaning(Phase phase) {
        return switch (phase) {
            case WAITING, SKIPPED, DEVELOPING -> Meaning.NEUTRAL;
            case OPEN -> Meaning.ALARM;
            case MISSED -> Meaning.CAUTION;
            case LOOKING, SECOND, KEPT -> Meaning.NOTICE;
            case RECORDED -> Meaning.CALM;
        };
    }
}
