package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;

/** Fills in strips that nobody types: for what is owed, for what a programme makes due, for run controls. */
final class StripFiller {
    private final PageContext context;
    private final BenchDoors doors;
    private final StripEntry entry;
    private final NewStrips strips;
    private final NewRunHearer hearer;
    private boolean owed;
    private Optional<String> due = Optional.empty();

    StripFiller(PageContext context, BenchDoors doors, StripEntry entry, NewStrips strips, NewRunHearer hearer) {
        this.context = context;
        this.doors = doors;
        this.entry = entry;
        this.strips = strips;
        this.hearer = hearer;
    }

    /** Wants a strip for each part of what is owed that a strip does. */
    void wantOwed() {
        owed = true;
    }

    /** Wants a strip for each sample of something due. */
    void wantDue(String key) {
        due = Optional.of(key);
    }

    /** Tells whether something due waits for somebody to say who they are. */
    boolean waitsForPerson() {
        return due.isPresent() && entry.by().isEmpty();
    }

    /** Fills in what is owed, if it is wanted and the methods are known. */
    void owedKnown(OwedList list) {
        if (owed && entry.choices().isPresent()) {
            owed = false;
            context.jobs()
                    .run(
                            FlowWords.get("owed.asking"),
                            progress -> OwedFirst.of(list.open(), doors),
                            this::fillOwed,
                            failure -> hearer.say(failure.getMessage()));
        }
    }

    /** Fills in what is due, once the methods are known and somebody has said who they are. */
    void personKnown() {
        if (due.isEmpty() || entry.choices().isEmpty() || entry.by().isEmpty()) {
            return;
        }
        String key = due.get();
        due = Optional.empty();
        Choices known = entry.choices().get();
        context.jobs()
                .run(
                        FlowWords.get("due.asking"),
                        progress -> DueStrips.ask(key, doors, known),
                        asked -> fillDue(asked, known),
                        failure -> hearer.say(failure.getMessage()));
    }

    /** Adds a strip for each run control that the site asks for and this run lacks. */
    void controls() {
        List<Reading> run = strips.all().stream().map(RunStrip::unread).toList();
        context.jobs()
                .run(
                        FlowWords.get("gate.asking"),
                        progress -> doors.advice().controlsDue(run),
                        this::fillControls,
                        failure -> hearer.say(failure.getMessage()));
    }

    private void fillOwed(List<OwedFirst> byStrip) {
        if (entry.by().isEmpty()) {
            hearer.say(FlowWords.get("owed.who"));
            entry.focus(Item.OPERATOR);
            return;
        }
        OwedStrips made =
                new OwedStrips(entry.choices().orElseThrow(), entry.by().get());
        int before = strips.next();
        long none = 0;
        for (OwedFirst one : byStrip) {
            List<RunStrip> some = made.of(one);
            strips.keep(some);
            none += some.isEmpty() ? 1 : 0;
        }
        String taken = none == 0 ? "owed.taken" : "owed.untaken";
        hearer.listed(FlowWords.get(byStrip.isEmpty() ? "owed.no-strip" : taken, strips.next() - before, none));
    }

    private void fillDue(List<DueStrips.Asked> asked, Choices known) {
        if (entry.by().isEmpty()) {
            return;
        }
        String typed = doors.lots().isEmpty() ? entry.form().text(Item.LOT) : "";
        DueStrips made =
                DueStrips.of(asked, known, DueStrips.lot(typed), entry.by().get());
        strips.keep(made.strips());
        String taken = made.without() == 0 ? "due.taken" : "due.untaken";
        hearer.listed(FlowWords.get(
                asked.isEmpty() ? "due.none-left" : taken, made.strips().size(), made.without()));
    }

    private void fillControls(List<DueControl> asked) {
        List<RunStrip> made = new ArrayList<>();
        asked.forEach(one -> entry.choices()
                .flatMap(known -> known.method(one.method().value()))
                .ifPresent(method -> made.add(ControlStrips.of(
                        one, method, strips.all().get(0).unread().operator()))));
        strips.keep(made);
        hearer.listed(FlowWords.get(
                asked.isEmpty() ? "new.controls-none" : "new.controls-added", ControlStrips.words(asked)));
    }
}
