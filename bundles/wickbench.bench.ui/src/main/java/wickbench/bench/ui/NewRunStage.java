package wickbench.bench.ui;

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
final class NewRunStage implements RunStage, StripFiller.Hearer {
    private static final int SIDE = 340;
    private static final int NAMED = 2;
    private static final List<Item> ANEW = List.of(
            Item.SAMPLE, Item.PLACE, Item.VISUAL, Item.DILUTION, Item.AREA, Item.CONTROL, Item.EXTRACTED, Item.SHAKEN);

    private final PageContext context;
    private final BenchDoors doors;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final EntryForm form;
    private final PaceFields pace;
    private final OwedList owed;
    private final Label words;
    private final Button take;
    private final Button add;
    private final Button plan;
    private final BenchPerson person;
    private final FormChoices offers;
    private final NewStrips strips;
    private final StripFiller filler;
    private Choices choices = new Choices(List.of(), List.of());
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<Method> method = Optional.empty();
    private FormCheck check = FormCheck.nothing();
    private String kit = "";
    private Optional<RunDraft> draft = Optional.empty();
    private boolean forRun;
    private String note = "";

    NewRunStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            RunActs acts) {
        this.context = context;
        this.doors = doors;
        this.hand = hand;
        this.timetable = timetable;
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
        StripList list = new StripList(beside, theme);
        Fit.grow(list.control());
        pace = new PaceFields(scroll.content(), context, timetable::planning);
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
        strips = new NewStrips(list, offers::drawn);
        filler = new StripFiller(context, doors, form, person, strips, () -> clock.map(known -> choices), this);
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
        return strips.all();
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
                ? Optional.of(new RunDraft(form.texts(), form.preChecks(), strips.all()))
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
            strips.put(before.strips());
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
        strips.put(List.of());
        forRun = false;
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
        filler.wantOwed();
        lookIfKnown();
    }

    /** Fills in a strip for each sample of something due, once the methods are known and somebody has said who they are. */
    void due(String key) {
        filler.wantDue(key);
        changed();
    }

    /** A strip for what is owed needs the methods in force, so nothing is asked before they are known. */
    private void lookIfKnown() {
        if (clock.isPresent()) {
            owed.look();
        }
    }

    private void owedLooked() {
        tell();
        filler.owedKnown(owed);
    }

    @Override
    public void filled(String said) {
        changed();
        note = said;
        tell();
    }

    @Override
    public void say(String text) {
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
                strips.next(), method.orElseThrow(), check.reading().orElseThrow(), check.clean(), offers.drawn());
        if (forRun) {
            hand.happened(
                    new RunEvent.Added(strip),
                    run -> {
                        clear();
                        timetable.replan(java.time.Duration.ZERO);
                        acts.go(Stage.CLOCK);
                    },
                    words::setText);
        } else {
            strips.add(strip);
            clear();
            form.control(Item.SAMPLE).setFocus();
        }
    }

    private void controls() {
        filler.controls();
    }

    private void clear() {
        note = "";
        ANEW.forEach(item -> form.put(item, ""));
        changed();
    }

    private void remove() {
        if (!strips.isEmpty()) {
            strips.removeLast();
            note = "";
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
        filler.personKnown();
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
        boolean waiting = filler.waitsForPerson();
        words.setText(waiting ? FlowWords.get("due.who") : untouched && !note.isEmpty() ? note : next);
        words.requestLayout();
        add.setEnabled(check.reading().isPresent() && person.named().isPresent());
        take.setEnabled(!forRun && owed.byStrip());
        plan.setText(FlowWords.get(forRun ? "new.back" : "new.plan"));
        plan.setEnabled(forRun || !strips.isEmpty() || check.reading().isPresent());
    }
}
