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
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunStrip;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Who, by which method, with which lot, and the samples of a run; or one more sample of a run under way. */
final class NewRunStage implements RunStage {
    private static final int SIDE = 340;
    private static final List<Item> ANEW = List.of(
            Item.SAMPLE, Item.PLACE, Item.VISUAL, Item.DILUTION, Item.AREA, Item.CONTROL, Item.EXTRACTED, Item.SHAKEN);

    private final PageContext context;
    private final RunActs acts;
    private final Composite box;
    private final Scroller scroll;
    private final EntryForm form;
    private final StripList list;
    private final Label words;
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
    private boolean forRun;

    NewRunStage(Composite parent, PageContext context, BenchDoors doors, RunActs acts) {
        this.context = context;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite columns = Fit.grow(controls.box(box, 2));
        scroll = new Scroller(columns, theme);
        Fit.grow(scroll.control());
        form = new EntryForm(scroll.content(), box, theme, this::changed);
        list = new StripList(columns, theme);
        GridData side = new GridData(SWT.FILL, SWT.FILL, false, true);
        side.widthHint = theme.px(SIDE);
        list.control().setLayoutData(side);
        Composite bar = Fit.wide(controls.box(box, 4));
        words = controls.text(bar, Type.BODY, "");
        Wide.button(controls.button(bar, FlowWords.get("new.remove"), this::remove), theme);
        add = Wide.button(controls.button(bar, FlowWords.get("new.add"), this::add), theme);
        plan = Wide.button(controls.mainButton(bar, FlowWords.get("new.plan"), this::toPlan), theme);
        person = new BenchPerson(context, doors, form, Item.OPERATOR, this::changed);
        offers = new FormChoices(context, doors, form);
        Enter.heard(box, this::enter);
        new PageKeys(box, Map.of(SWT.F5, this::toPlan, SWT.F8, this::remove));
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

    void start(Choices some, SiteClock site) {
        choices = some;
        clock = Optional.of(site);
        form.picks(some.peoplePicks(), some.methodPicks());
        some.onlyMethod()
                .ifPresent(only -> form.put(Item.METHOD, only.ref().id().value()));
        changed();
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
    }

    @Override
    public void tick(Moment now) {
        // nothing here runs by the clock
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
        ANEW.forEach(item -> form.put(item, ""));
        changed();
    }

    private void remove() {
        if (!strips.isEmpty()) {
            strips.remove(strips.size() - 1);
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
        offers.look(method);
        check = FormReader.check(new Typed(form.texts(), form.preChecks()), method, clock.get());
        form.say(check, method);
        tell();
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
        words.setText(needed.isEmpty() ? FlowWords.get(forRun ? "new.enter-one" : "new.enter") : needed);
        words.requestLayout();
        add.setEnabled(check.reading().isPresent() && person.named().isPresent());
        plan.setText(FlowWords.get(forRun ? "new.back" : "new.plan"));
        plan.setEnabled(forRun || !strips.isEmpty() || check.reading().isPresent());
    }
}
