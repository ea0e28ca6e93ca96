package wickbench.plant.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.plant.PlantBook;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** Tests of the programme that are overdue, missed, or due. */
@Component
public final class PlantDue implements DueSource {
    private final PlantBook book;

    @Activate
    public PlantDue(@Reference PlantBook book) {
        this.book = book;
    }

    @Override
    public List<Due> due() {
        List<DueItem> items = book.due(book.now());
        long late = count(items, DueState.OVERDUE) + count(items, DueState.MISSED);
        long due = count(items, DueState.DUE);
        if (late > 0) {
            return List.of(new Due(
                    new Mark(PlantUiWords.get("due.late", late), Shape.TRIANGLE, Meaning.CAUTION), "plant", "due"));
        }
        return due == 0
                ? List.of()
                : List.of(new Due(
                        new Mark(PlantUiWords.get("due.now", due), Shape.SQUARE, Meaning.NOTICE), "plant", "due"));
    }

    private static long count(List<DueItem> items, DueState state) {
        return items.stream().filter(item -> item.state() == state).count();
    }
}
