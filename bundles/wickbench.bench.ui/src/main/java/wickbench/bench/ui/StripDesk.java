package wickbench.bench.ui;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.journal.Entry;
import wickbench.api.method.Method;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.OutcomeWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Mark;

/** Enters one strip after another: looks the form through, has it judged, and records it. */
final class StripDesk implements StripActs {
    private static final int TICK_MILLIS = 1000;

    private final PageContext context;
    private final BenchDoors doors;
    private final StripView view;
    private final Map<String, Method> methods = new LinkedHashMap<>();
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<Method> method = Optional.empty();
    private FormCheck check = new FormCheck(Map.of(), Map.of(), List.of(), Optional.empty());
    private Optional<Reading> asked = Optional.empty();
    private Optional<RecordedReading> judged = Optional.empty();
    private boolean kept;
    private boolean busy;
    private String last = "";

    StripDesk(Composite parent, PageContext context, BenchDoors doors) {
        this.context = context;
        this.doors = doors;
        view = new StripView(parent, context.theme(), this);
        view.drawing().onAnswer((role, seen) -> answered());
        view.onEnter(this::record);
        new PageKeys(view.control(), Map.of(SWT.F8, () -> now(Item.STARTED), SWT.F9, () -> now(Item.READ)));
        context.onActor(actor -> tell());
        view.method(method);
        view.verdict().waiting(BenchUiWords.get("verdict.first"));
        view.bar().mayGoOn(false);
        tell();
    }

    Composite control() {
        return view.control();
    }

    StripView view() {
        return view;
    }

    /** Takes what can be chosen from, and lets work begin. */
    void start(List<Person> people, List<Method> inForce, SiteClock site) {
        clock = Optional.of(site);
        inForce.forEach(some -> methods.put(some.ref().id().value(), some));
        view.form().picks(
                people.stream().map(person -> new Pick(person.id().value(), person.name().orElse(""))).toList(),
                inForce.stream().map(some -> new Pick(some.ref().id().value(), some.title())).toList());
        if (inForce.size() == 1) {
            view.form().put(Item.METHOD, inForce.get(0).ref().id().value());
        }
        context.actor().map(PersonId::value).ifPresent(id -> view.form().put(Item.OPERATOR, id));
        changed();
        tick();
    }

    void focus() {
        if (!kept) {
            Item first = List.of(Item.METHOD, Item.OPERATOR, Item.LOT, Item.SAMPLE).stream()
                    .filter(item -> view.form().text(item).isBlank())
                    .findFirst()
                    .orElse(Item.SAMPLE);
            view.form().control(first).setFocus();
        }
    }

    private void tick() {
        if (!view.control().isDisposed()) {
            showClock();
            view.control().getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    @Override
    public void changed() {
        if (clock.isEmpty() || kept || busy) {
            return;
        }
        takeMethod();
        Typed typed = new Typed(view.form().texts(), view.form().preChecks(), view.drawing().answers());
        check = FormReader.check(typed, method, clock.get());
        view.form().say(check, method);
        showClock();
        judge();
        tell();
    }

    private void takeMethod() {
        Optional<Method> named =
                Optional.ofNullable(methods.get(view.form().text(Item.METHOD).strip().toLowerCase(Locale.ROOT)));
        if (!named.equals(method)) {
            method = named;
            view.method(method);
            view.form().method(method);
        }
    }

    /** The first answer is the reading: what is seen later is seen later. */
    private void answered() {
        boolean unread = view.form().text(Item.READ).isBlank();
        if (unread && !view.form().text(Item.STARTED).isBlank() && !view.drawing().answers().isEmpty()) {
            clock.ifPresent(site -> view.form().put(Item.READ, site.nowTyped()));
        }
        changed();
    }

    @Override
    public void now(Item item) {
        if (clock.isPresent() && !kept && !busy) {
            view.form().put(item, clock.get().nowTyped());
            if (item == Item.READ) {
                view.drawing().setFocus();
            }
            changed();
        }
    }

    private void showClock() {
        view.clock(clock.flatMap(site -> method.flatMap(by -> StripClock.of(
                instant(Item.STARTED, site), instant(Item.READ, site), site.now(), by.timing()))));
    }

    private Optional<Instant> instant(Item item, SiteClock site) {
        String text = view.form().text(item).strip();
        if (text.isEmpty() || check.wrong().containsKey(item)) {
            return Optional.empty();
        }
        return Optional.of(site.past(text));
    }

    private void judge() {
        if (check.reading().isEmpty()) {
            asked = Optional.empty();
            judged = Optional.empty();
            view.verdict().waiting(view.drawing().complete() ? needed() : BenchUiWords.get("verdict.first"));
            return;
        }
        if (asked.equals(check.reading())) {
            return;
        }
        asked = check.reading();
        judged = Optional.empty();
        Reading reading = asked.get();
        context.jobs()
                .run(
                        BenchUiWords.get("judging"),
                        progress -> doors.door().judge(List.of(reading)).get(0),
                        this::judged,
                        failure -> view.verdict().waiting(failure.getMessage()));
    }

    private void judged(RecordedReading now) {
        if (asked.filter(now.reading()::equals).isPresent()) {
            judged = Optional.of(now);
            view.verdict().show(now);
            view.showVerdict();
            tell();
        }
    }

    @Override
    public void record() {
        if (kept) {
            next();
        } else if (judged.isPresent() && context.actor().isPresent() && !busy) {
            busy = true;
            view.open(false);
            PersonId by = context.actor().get();
            Reading reading = judged.get().reading();
            context.jobs().run(BenchUiWords.get("recording"), progress -> keep(reading, by), this::kept, this::refused);
        } else {
            tell();
        }
    }

    private Sealed keep(Reading reading, PersonId by) {
        Kept one = doors.door().record(List.of(reading), by).get(0);
        return new Sealed(one, doors.journal().entry(one.ref()).map(Entry::leaf));
    }

    private void kept(Sealed sealed) {
        busy = false;
        kept = true;
        RecordedReading recorded = sealed.kept().reading();
        last = BenchUiWords.get(
                "last",
                recorded.reading().sample().code(),
                OutcomeWords.text(recorded.verdict().outcome()),
                sealed.kept().ref());
        view.verdict().kept(recorded, sealed.words());
        view.showVerdict();
        view.bar().outcome(Optional.of(Mark.of(recorded.verdict().outcome())));
        view.bar().say(sealed.words());
        view.bar().mayRecord(false);
        view.bar().mayGoOn(true);
        view.bar().focusNext();
        context.say(last);
    }

    private void refused(Exception failure) {
        busy = false;
        view.open(true);
        view.form().method(method);
        view.bar().say(BenchUiWords.get("not-recorded", failure.getMessage()));
    }

    @Override
    public void next() {
        goOn(NextStrip.OTHER_SAMPLE, Item.SAMPLE);
    }

    @Override
    public void again() {
        goOn(NextStrip.SAME_SAMPLE, Item.DILUTION);
    }

    private void goOn(NextStrip kind, Item focus) {
        kept = false;
        asked = Optional.empty();
        judged = Optional.empty();
        view.open(true);
        kind.cleared().forEach(item -> view.form().put(item, ""));
        view.drawing().answers(Map.of());
        view.method(method);
        view.form().method(method);
        view.bar().mayGoOn(false);
        view.form().control(focus).setFocus();
        changed();
    }

    /** Says why Record does nothing yet, or that Enter records. */
    private void tell() {
        if (kept || busy) {
            return;
        }
        boolean may = judged.isPresent() && context.actor().isPresent();
        view.bar().outcome(judged.map(now -> Mark.of(now.verdict().outcome())));
        view.bar().mayRecord(may);
        view.bar().say(may ? BenchUiWords.get("enter-records") : last.isEmpty() ? needed() : needed() + "  " + last);
    }

    private String needed() {
        if (!check.wrong().isEmpty() || !check.wrongChecks().isEmpty()) {
            return BenchUiWords.get("needed.right", wrongOnes());
        }
        if (!check.missing().isEmpty()) {
            return BenchUiWords.get("needed.missing", String.join(", ", check.missing()));
        }
        return BenchUiWords.get(context.actor().isEmpty() ? "needed.actor" : "judging");
    }

    private String wrongOnes() {
        List<String> wrong = new ArrayList<>(check.wrong().keySet().stream().sorted().map(Item::words).toList());
        wrong.addAll(check.wrongChecks().keySet());
        return String.join(", ", wrong);
    }
}
