package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** Who, by which method, with which lot, and the samples of a run; or one more sample of a run under way. */
final class NewRunStage implements RunStage {
    private static final int SIDE = 340;
    private static final int NAMED = 2;
    private static final List<Item> ANEW = List.of(
            Item.SAMPLE, Item.PLACE, Item.VISUAL, Item.DILUTION, Item.AREA, Item.CONTROL, Item.EXTRACTED, Item.SHAKEN);

    private final PageContext context;
    private final BenchDoors doors;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final EntryForm form;
    private final StripList list;
    private final PaceFields pace;
    private final OwedList owed;
    private final Label words;
    private final Button take;
    private final Button add;
    private final Button plan;
    private final BenchPerson person;
    private final FormChoices offers;
    private final List<RunStrip> strips = new ArrayList<>();
    private Choices choices = new Choices(List.of(), List.of());
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<Method> method = Optional.empty();
    private FormCheck check = FormCheck.nothing();
    private String kit = "";
    private Optional<RunDraft> draft = Optional.empty();
    private boolean forRun;
    private boolean waits;
    private Optional<String> due = Optional.empty();
    private String note = "";

    NewRunStage(Composite parent, PageContext context, BenchDoors doors, RunActs acts) {
        this.context = context;
        this.doors = doors;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite columns = Fit.grow(controls.box(box, 2));
        scroll = new Scroller(columns, theme);
        Fit.grow(scroll.control());
        form = new EntryForm(scroll.content(), box, theme, this::changed);
        Composite beside = controls.box(columns, 1);
        GridData side = new GridData(SWT.FILL, SWT.FILL, false, true);
        side.widthHint = theme.px(SIDE);
        beside.setLayoutData(side);
        list = new StripList(beside, theme);
        Fit.grow(list.control());
        pace = new PaceFields(scroll.content(), context, acts::pace);
        owed = new OwedList(beside, context, doors, NAMED, this::owedLooked);
        controls.button(beside, FlowWords.get("owed.all"), () -> acts.go(Stage.NEXT));
        words = Fit.wide(controls.text(box, Type.BODY, ""));
        Composite bar = Fit.right(controls.box(box, 5));
        take = Wide.button(controls.button(bar, FlowWords.get("owed.take"), () -> acts.runOwed(this::say)), theme);
        Wide.button(controls.button(bar, FlowWords.get("new.controls"), this::controls), theme);
        Wide.button(controls.button(bar, FlowWords.get("new.remove"), this::remove), theme);
        add = Wide.button(controls.button(bar, FlowWords.get("new.add"), this::add), theme);
        plan = Wide.button(controls.mainButton(bar, FlowWords.get("new.plan"), this::toPlan), theme);
        person = new BenchPerson(context, doors, form, Item.OPERATOR, this::changed);
        offers = new FormChoices(context, doors, form);
        Enter.heard(box, this::enter);
        new PageKeys(
                box,
                Map.of(
                        SWT.F4, () -> acts.runOwed(this::say),
                        SWT.F5, this::toPlan,
                        SWT.F7, this::controls,
                        SWT.F8, this::remove,
                        SWT.F12, () -> acts.go(Stage.NEXT)));
        context.onActor(actor -> changed());
    }

    @Override
    public Composite control() {
        return box;
    }

    EntryForm form() {
        return form;
    }

    List<RunStrip> strips() {
        return List.copyOf(strips);
    }

    String said() {
        return words.getText();
    }

    Optional<PersonId> by() {
        return person.named();
    }

    /** Returns what stands on the form and in the list, if any of it would be missed. */
    Optional<RunDraft> draft() {
        boolean typed = form.texts().values().stream().anyMatch(text -> !text.isBlank());
        return typed || !strips.isEmpty()
                ? Optional.of(new RunDraft(form.texts(), form.preChecks(), strips))
                : Optional.empty();
    }

    /** Puts back what stood there; the fields of a method wait until that is known. */
    void restore(RunDraft before) {
        draft = Optional.of(before);
        if (clock.isPresent()) {
            putBack();
        }
    }

    private void putBack() {
        draft.ifPresent(before -> {
            draft = Optional.empty();
            strips.clear();
            strips.addAll(before.strips());
            list.show(strips);
            before.texts().forEach(form::put);
            changed();
            form.preChecks(before.preChecks());
            changed();
        });
    }

    void start(Choices some, SiteClock site) {
        choices = some;
        offers.begin();
        clock = Optional.of(site);
        owed.look();
        form.picks(some.peoplePicks(), some.methodPicks());
        some.onlyMethod()
                .ifPresent(only -> form.put(Item.METHOD, only.ref().id().value()));
        changed();
        putBack();
    }

    /** Starts over with another run; who, method and lot stay. */
    void another() {
        strips.clear();
        forRun = false;
        list.show(strips);
        clear();
    }

    /** One more sample for the run under way, or for a new one. */
    void forRun(boolean underWay) {
        forRun = underWay;
        changed();
    }

    @Override
    public void shown() {
        Item first = List.of(Item.METHOD, Item.OPERATOR, Item.LOT, Item.SAMPLE).stream()
                .filter(item -> form.text(item).isBlank())
                .findFirst()
                .orElse(Item.SAMPLE);
        form.control(first).setFocus();
        changed();
        lookIfKnown();
    }

    @Override
    public void tick(Moment now) {
        // nothing here runs by the clock
    }

    /** Fills in a strip for each part of what is owed that a strip does, once it is known what that is. */
    void owed() {
        waits = true;
        lookIfKnown();
    }

    /** A strip for what is owed needs the methods in force, so nothing is asked before they are known. */
    private void lookIfKnown() {
        if (clock.isPresent()) {
            owed.look();
        }
    }

    private void owedLooked() {
        tell();
        if (waits && clock.isPresent()) {
            waits = false;
            context.jobs()
                    .run(
                            FlowWords.get("owed.asking"),
                            progress -> OwedFirst.of(owed.open(), doors),
                            this::fill,
                            failure -> say(failure.getMessage()));
        }
    }

    /** Fills in a strip for each sample of something due, once the methods are known and somebody has said who they are. */
    void due(String key) {
        due = Optional.of(key);
        changed();
    }

    private void fillDue() {
        if (due.isEmpty() || clock.isEmpty() || person.named().isEmpty()) {
            return;
        }
        String key = due.get();
        due = Optional.empty();
        context.jobs()
                .run(
                        FlowWords.get("due.asking"),
                        progress -> DueStrips.ask(key, doors, choices),
                        this::filled,
                        failure -> say(failure.getMessage()));
    }

    private void filled(List<DueStrips.Asked> asked) {
        if (person.named().isEmpty()) {
            tell();
            return;
        }
        String typed = doors.lots().isEmpty() ? form.text(Item.LOT) : "";
        DueStrips made = DueStrips.of(
                asked, choices, DueStrips.lot(typed), person.named().get());
        made.strips().forEach(this::keep);
        list.show(strips);
        changed();
        String taken = made.without() == 0 ? "due.taken" : "due.untaken";
        note = FlowWords.get(
                asked.isEmpty() ? "due.none-left" : taken, made.strips().size(), made.without());
        tell();
    }

    private void fill(List<OwedFirst> byStrip) {
        if (person.named().isEmpty()) {
            say(FlowWords.get("owed.who"));
            form.control(Item.OPERATOR).setFocus();
            return;
        }
        OwedStrips filled = new OwedStrips(choices, person.named().get());
        int before = strips.size();
        long none = 0;
        for (OwedFirst one : byStrip) {
            List<RunStrip> some = filled.of(one);
            some.forEach(this::keep);
            none += some.isEmpty() ? 1 : 0;
        }
        list.show(strips);
        changed();
        String taken = none == 0 ? "owed.taken" : "owed.untaken";
        note = FlowWords.get(byStrip.isEmpty() ? "owed.no-strip" : taken, strips.size() - before, none);
        tell();
    }

    /** Adds a strip for each run control that the site asks for and this run lacks. */
    private void controls() {
        List<Reading> run = strips.stream().map(RunStrip::unread).toList();
        context.jobs()
                .run(
                        FlowWords.get("gate.asking"),
                        progress -> doors.advice().controlsDue(run),
                        this::controlled,
                        failure -> say(failure.getMessage()));
    }

    private void controlled(List<DueControl> due) {
        due.forEach(one -> choices.method(one.method().value())
                .ifPresent(asked ->
                        keep(ControlStrips.of(one, asked, strips.get(0).unread().operator()))));
        list.show(strips);
        changed();
        note = FlowWords.get(due.isEmpty() ? "new.controls-none" : "new.controls-added", ControlStrips.words(due));
        tell();
    }

    /** A sample that waits in the list already is not put there twice. */
    private void keep(RunStrip strip) {
        boolean there = strips.stream()
                .anyMatch(other -> other.unread().sample().equals(strip.unread().sample())
                        && other.unread().method().equals(strip.unread().method())
                        && other.unread().lot().equals(strip.unread().lot()));
        if (!there) {
            strips.add(new RunStrip(
                    strips.size() + 1, strip.unread(), strip.develop(), strip.window(), strip.clean(), offers.drawn()));
        }
    }

    private void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    PaceFields pace() {
        return pace;
    }

    OwedList owedList() {
        return owed;
    }

    private void enter() {
        if (!person.takeEnter()) {
            add();
        }
    }

    void add() {
        if (check.reading().isEmpty() || person.named().isEmpty()) {
            tell();
            return;
        }
        RunStrip strip = RunStrip.of(
                strips.size() + 1, method.orElseThrow(), check.reading().orElseThrow(), check.clean(), offers.drawn());
        if (forRun) {
            acts.happened(
                    new RunEvent.Added(strip),
                    run -> {
                        clear();
                        acts.replan(java.time.Duration.ZERO);
                        acts.go(Stage.CLOCK);
                    },
                    words::setText);
        } else {
            strips.add(strip);
            list.show(strips);
            clear();
            form.control(Item.SAMPLE).setFocus();
        }
    }

    private void clear() {
        note = "";
        ANEW.forEach(item -> form.put(item, ""));
        changed();
    }

    private void remove() {
        if (!strips.isEmpty()) {
            strips.remove(strips.size() - 1);
            note = "";
            list.show(strips);
            changed();
        }
    }

    /** Goes on to the plan; what stands whole on the form is a strip too. */
    void toPlan() {
        if (forRun) {
            acts.go(Stage.CLOCK);
            return;
        }
        if (!form.text(Item.SAMPLE).isBlank()) {
            add();
        }
        if (!strips.isEmpty() && form.text(Item.SAMPLE).isBlank()) {
            acts.go(Stage.PLAN);
        }
    }

    void changed() {
        if (clock.isEmpty()) {
            return;
        }
        Optional<Method> named = choices.method(form.text(Item.METHOD));
        if (!named.equals(method)) {
            method = named;
            named.map(Method::kit).ifPresent(this::kit);
            form.method(method);
        }
        offers.look(method, person.named(), choices);
        check = FormReader.check(new Typed(form.texts(), form.preChecks()), method, clock.get());
        form.say(check, method);
        tell();
        fillDue();
    }

    /** A lot belongs to its kit, and does not stay when that is another. */
    private void kit(String next) {
        boolean other = !kit.isEmpty() && !kit.equals(next);
        kit = next;
        if (other) {
            form.put(Item.LOT, "");
        }
    }

    private void tell() {
        String needed =
                person.named().isEmpty() && !form.text(Item.OPERATOR).isBlank() ? person.words() : check.needed();
        String next = needed.isEmpty() ? FlowWords.get(forRun ? "new.enter-one" : "new.enter") : needed;
        // what was filled in is said until one goes on with the form
        boolean untouched = form.text(Item.SAMPLE).isBlank();
        boolean waiting = due.isPresent() && person.named().isEmpty();
        words.setText(waiting ? FlowWords.get("due.who") : untouched && !note.isEmpty() ? note : next);
        words.requestLayout();
        add.setEnabled(check.reading().isPresent() && person.named().isPresent());
        take.setEnabled(!forRun && owed.byStrip());
        plan.setText(FlowWords.get(forRun ? "new.back" : "new.plan"));
        plan.setEnabled(forRun || !strips.isEmpty() || check.reading().isPresent());
    }
}
