package wickbench.bench.ui;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Type;

/** The oldest of what is owed at this site, of whatever run, and how much there is besides. */
final class OwedList {
    private final PageContext context;
    private final Composite card;
    private final int most;
    private final Runnable changed;
    private final OwedLook look;

    /**
     * @param most how many are named; of the others it says how many they are
     * @param changed hears when another list is shown
     */
    OwedList(Composite parent, PageContext context, BenchDoors doors, int most, Runnable changed) {
        this.context = context;
        this.most = most;
        this.changed = changed;
        card = Fit.wide(context.theme().controls().card(parent, 1));
        look = new OwedLook(context, doors, this::take, this::failed);
        show(List.of());
    }

    List<OwedDue> open() {
        return look.open();
    }

    boolean byStrip() {
        return look.byStrip();
    }

    void look() {
        look.look();
    }

    private void take(List<OwedDue> some) {
        if (!card.isDisposed()) {
            show(some);
            changed.run();
        }
    }

    private void failed(String why) {
        if (!card.isDisposed()) {
            clear(why);
            changed.run();
        }
    }

    private void show(List<OwedDue> some) {
        clear(FlowWords.get(some.isEmpty() ? "owed.none" : "owed.head", some.size()));
        some.stream()
                .limit(most)
                .forEach(owed ->
                        Fit.wide(new MarkedLine(card, context.theme(), OwedLine.mark(owed), OwedLine.words(owed))));
        if (some.size() > most) {
            context.theme().controls().quiet(card, FlowWords.get("owed.more", some.size() - most));
        }
        card.requestLayout();
    }

    private void clear(String heading) {
        for (Control old : card.getChildren()) {
            old.dispose();
        }
        Label head = Fit.wide(context.theme().controls().text(card, Type.STRONG, heading));
        head.requestLayout();
    }
}
