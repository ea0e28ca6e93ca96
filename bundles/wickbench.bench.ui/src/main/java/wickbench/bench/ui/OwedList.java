package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.RunControl;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** What is owed at this site, of whatever run, until it is done. */
final class OwedList {
    private final PageContext context;
    private final BenchDoors doors;
    private final Composite card;
    private final int most;
    private final Runnable changed;
    private List<OwedDue> open = List.of();
    private Optional<Job> looking = Optional.empty();
    private boolean again;

    /**
     * @param most how many are named; of the others it says how many they are
     * @param changed hears when another list is shown
     */
    OwedList(Composite parent, PageContext context, BenchDoors doors, int most, Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.most = most;
        this.changed = changed;
        card = Fit.wide(context.theme().controls().card(parent, 1));
        show(List.of());
    }

    List<OwedDue> open() {
        return open;
    }

    boolean byStrip() {
        return open.stream().anyMatch(OwedDue::byStrip);
    }

    /** Asks anew what is open; asked while a look is under way, once more after it. */
    void look() {
        if (looking.filter(Job::running).isPresent()) {
            again = true;
            return;
        }
        looking = Optional.of(context.jobs()
                .run(FlowWords.get("owed.asking"), progress -> OwedDue.open(doors), this::take, this::failed));
    }

    private void take(List<OwedDue> some) {
        if (!card.isDisposed()) {
            show(some);
            looked();
        }
    }

    /** What could not be read is not nothing. */
    private void failed(Exception failure) {
        open = List.of();
        clear(FlowWords.get("owed.trouble", failure.getMessage()));
        looked();
    }

    private void looked() {
        looking = Optional.empty();
        changed.run();
        if (again) {
            again = false;
            look();
        }
    }

    private void show(List<OwedDue> some) {
        open = some;
        clear(FlowWords.get(some.isEmpty() ? "owed.none" : "owed.head", some.size()));
        some.stream()
                .limit(most)
                .forEach(owed -> Fit.wide(new MarkedLine(card, context.theme(), mark(owed), words(owed))));
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

    private static Mark mark(OwedDue owed) {
        Step step = owed.item().step();
        boolean grave = step == Step.HOLD || step == Step.DECIDE || owed.item().callQuality();
        return grave
                ? new Mark("", Shape.TRIANGLE, Meaning.ALARM)
                : new Mark("", Shape.SQUARE, owed.byStrip() ? Meaning.NOTICE : Meaning.CAUTION);
    }

    private String words(OwedDue owed) {
        OwedItem item = owed.item();
        List<String> words = new ArrayList<>();
        words.add(FlowWords.get("owed." + item.step().code()));
        words.add(item.sample());
        words.add(item.place());
        words.add(more(owed));
        return String.join(
                " \u00b7 ", words.stream().filter(word -> !word.isBlank()).toList());
    }

    private static String more(OwedDue owed) {
        OwedItem item = owed.item();
        List<String> more = new ArrayList<>();
        if (item.step() == Step.REPEAT_DILUTED || item.step() == Step.BRACKET) {
            item.missing().forEach(times -> more.add("\u00d7" + times));
        } else if (item.step() == Step.DECIDE) {
            item.missing().stream().map(ReadingWords::doubt).forEach(more::add);
        } else if (item.step() == Step.RUN_CONTROL) {
            item.missing().stream()
                    .map(code -> ReadingWords.text(Coded.of(RunControl.class, code)))
                    .forEach(more::add);
            item.method().map(Object::toString).ifPresent(more::add);
        } else {
            item.missing().stream().filter(place -> !place.equals(item.place())).forEach(more::add);
        }
        if (item.step() == Step.RE_TEST) {
            if (!item.neighboursNamed()) {
                more.add(FlowWords.get("owed.neighbours"));
            }
            if (owed.unclean()) {
                more.add(FlowWords.get("owed.unclean"));
            }
        }
        if (item.callQuality()) {
            more.add(FlowWords.get("owed.quality"));
        }
        return String.join(", ", more);
    }
}
