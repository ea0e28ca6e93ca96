package wickbench.bench.ui;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.OutcomeWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Mark;

/** Enters one strip after another: looks the form through, has it judged, and records it. */
final class StripDesk implements StripActs {
    private static final int TICK_MILLIS = 1000;

    private final PageContext context;
    private final StripView view;
    private final StripJudge judge;
    private final StripRecorder recorder;
    private Choices choices = new Choices(List.of(), List.of());
    private Optional<SiteClock> clock = Optional.empty();
    private Optional<Method> method = Optional.empty();
    private FormCheck check = new FormCheck(Map.of(), Map.of(), List.of(), Optional.empty());
    private boolean kept;
    private String last = "";

    StripDesk(Composite parent, PageContext context, BenchDoors doors) {
        this.context = context;
        view = new StripView(parent, context.theme(), this);
        judge = new StripJudge(
                context.jobs(),
                doors.door(),
                this::judged,
                failure -> view.verdict().waiting(failure.getMessage()));
        recorder = new StripRecorder(context.jobs(), doors, this::kept, this::refused);
        view.drawing().onAnswer((role, seen) -> answered());
        view.onEnter(this::record);
        new PageKeys(view.control(), Map.of(SWT.F8, () -> now(Item.STARTED), SWT.F9, () -> now(Item.READ)));
        context.onActor(actor -> signedIn());
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
    void start(Choices some, SiteClock site) {
        clock = Optional.of(site);
        choices = some;
        view.form().picks(some.peoplePicks(), some.methodPicks());
        some.onlyMethod()
                .ifPresent(only -> view.form().put(Item.METHOD, only.ref().id().value()));
        signedIn();
        changed();
        tick();
    }

    /** Whoever signs in is taken for the one who reads, unless another stands there. */
    private void signedIn() {
        if (!kept && !recorder.busy() && view.form().text(Item.OPERATOR).isBlank()) {
            context.actor().map(PersonId::value).ifPresent(id -> view.form().put(Item.OPERATOR, id));
        }
        tell();
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
        if (clock.isEmpty() || kept || recorder.busy()) {
            return;
        }
        takeMethod();
        Typed typed = new Typed(
                view.form().texts(), view.form().preChecks(), view.drawing().answers());
        check = FormReader.check(typed, method, clock.get());
        view.form().say(check, method);
        showClock();
        judge();
        tell();
    }

    private void takeMethod() {
        Optional<Method> named = choices.method(view.form().text(Item.METHOD));
        if (!named.equals(method)) {
            method = named;
            view.method(method);
            view.form().method(method);
        }
    }

    /** The first answer is the reading: what is seen later is seen later. */
    private void answered() {
        boolean unread = view.form().text(Item.READ).isBlank();
        if (unread
                && !view.form().text(Item.STARTED).isBlank()
                && !view.drawing().answers().isEmpty()) {
            clock.ifPresent(site -> view.form().put(Item.READ, site.nowTyped()));
        }
        changed();
    }

    @Override
    public void now(Item item) {
        if (clock.isPresent() && !kept && !recorder.busy()) {
            view.form().put(item, clock.get().nowTyped());
            if (item == Item.READ) {
                view.drawing().setFocus();
            }
            changed();
        }
    }

    private void showClock() {
        view.clock(clock.flatMap(site -> method.flatMap(
                by -> StripClock.of(instant(Item.STARTED, site), instant(Item.READ, site), site.now(), by.timing()))));
    }

    private Optional<Instant> instant(Item item, SiteClock site) {
        return site.stated(view.form().text(item));
    }

    private void judge() {
        if (check.reading().isPresent()) {
            judge.ask(check.reading().get());
        } else {
            judge.forget();
            view.verdict().waiting(view.drawing().complete() ? needed() : BenchUiWords.get("verdict.first"));
        }
    }

    private void judged(RecordedReading now) {
        view.verdict().show(now);
        view.showVerdict();
        tell();
    }

    @Override
    public void record() {
        if (kept) {
            next();
        } else if (judge.verdict().isPresent() && context.actor().isPresent() && !recorder.busy()) {
            view.open(false);
            recorder.record(judge.verdict().get().reading(), context.actor().get());
        } else {
            tell();
        }
    }

    private void kept(Sealed sealed) {
        kept = true;
        RecordedReading recorded = sealed.kept().reading();
        last = BenchUiWords.get(
                "last",
                recorded.reading().sample().code(),
                OutcomeWords.text(
                        recorded.verdict().outcome(),
                        recorded.reading().sample().dilution()),
                sealed.kept().ref());
        view.verdict().kept(recorded, sealed.words(), toLedger(sealed.kept()));
        view.showVerdict();
        view.bar()
                .outcome(Optional.of(Mark.of(
                        recorded.verdict().outcome(),
                        recorded.reading().sample().dilution())));
        view.bar().say(sealed.words());
        view.bar().mayRecord(false);
        view.bar().mayGoOn(true);
        view.bar().focusNext();
        context.say(last);
    }

    private Optional<Runnable> toLedger(Kept one) {
        return context.has("ledger")
                ? Optional.of(() -> context.show("ledger", one.id().toString()))
                : Optional.empty();
    }

    private void refused(Exception failure) {
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
        judge.forget();
        view.open(true);
        kind.cleared().forEach(item -> view.form().put(item, ""));
        view.drawing().answers(Map.of());
        view.method(method);
        view.form().method(method);
        view.bar().mayGoOn(false);
        view.form().control(focus).setFocus();
        view.showStrip();
        changed();
    }

    /** Says why Record does nothing yet, or that Enter records. */
    private void tell() {
        if (kept || recorder.busy()) {
            return;
        }
        boolean may = judge.verdict().isPresent() && context.actor().isPresent();
        view.bar()
                .outcome(judge.verdict()
                        .map(now -> Mark.of(
                                now.verdict().outcome(), now.reading().sample().dilution())));
        view.bar().mayRecord(may);
        view.bar().say(may ? BenchUiWords.get("enter-records") : last.isEmpty() ? needed() : needed() + "  " + last);
    }

    private String needed() {
        return new Needs(check, context.actor().isPresent()).words();
    }
}
