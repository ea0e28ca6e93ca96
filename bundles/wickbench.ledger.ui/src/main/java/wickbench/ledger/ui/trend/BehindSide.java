package wickbench.ledger.ui.trend;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.ledger.trend.Trending.Mark;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.ledger.ui.trend.TrendView.Choice;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.TableKit;
import wickbench.widgets.Type;

/** The right side of the page: the strips behind a point of the chart, a signal or a field of the map. */
final class BehindSide {
    private final PageContext context;
    private final TrendDoors doors;
    private final Composite right;
    private Optional<TableKit<Behind>> behind = Optional.empty();

    BehindSide(Composite parent, PageContext context, TrendDoors doors) {
        this.context = context;
        this.doors = doors;
        right = context.theme().controls().box(parent, 1);
        blank();
    }

    Optional<TableKit<Behind>> list() {
        return behind;
    }

    /** Says what to choose. */
    void blank() {
        behind = Optional.empty();
        clear();
        context.theme().controls().text(right, Type.BODY, TrendWords.get("behind.choose"));
        right.layout(true, true);
    }

    /** Lists the strips behind what was chosen, or goes to the one result that it is. */
    void choose(Trend trend, Choice choice) {
        Optional<Mark> mark =
                choice.mark().filter(point -> point < trend.marks().size()).map(trend.marks()::get);
        Optional<String> event = mark.flatMap(Mark::result).map(Object::toString);
        if (event.isPresent()) {
            context.show("ledger", event.get());
            return;
        }
        Optional<java.time.LocalDate> monday = choice.monday().or(() -> mark.flatMap(Mark::monday));
        String words = choice.place()
                .map(place -> TrendWords.get("behind.place", place, monday.orElseThrow()))
                .orElseGet(() -> TrendWords.get("behind.week", monday.orElseThrow()));
        context.jobs()
                .run(
                        TrendWords.get("reckoning"),
                        progress -> doors.trending().behind(trend.asked(), monday, choice.place()),
                        strips -> show(words, strips));
    }

    private void show(String words, List<Behind> strips) {
        clear();
        Label head = context.theme()
                .controls()
                .text(right, Type.BODY, BehindList.words(words, strips).replace("&", "&&"));
        head.setToolTipText(TrendWords.get("behind.open"));
        TableKit<Behind> kit = new BehindList(context, doors.site().now().zone()).into(right, strips);
        Fit.grow(kit.control());
        behind = Optional.of(kit);
        kit.onLoaded(() -> {
            if (kit.selected().isEmpty() && !kit.rows().isEmpty()) {
                kit.select(kit.rows().get(0));
            }
        });
        right.layout(true, true);
        kit.focus();
    }

    private void clear() {
        for (Control old : right.getChildren()) {
            old.dispose();
        }
    }
}
