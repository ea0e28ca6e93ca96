package wickbench.training.ui;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.shell.PageContext;
import wickbench.training.Actor;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.ui.CallRun.Phase;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Shape;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** The strips of a round before one reader, called one after the other by their codes; nothing here knows the key. */
final class CallStage {
    private static final int TICK_MILLIS = 250;

    private final PageContext context;
    private final TrainingDoors doors;
    private final Runnable back;
    private final Composite box;
    private final Label title;
    private final Badge clock;
    private final StripPhoto photo;
    private final StripDrawing drawing;
    private final Field<Combo> outcome;
    private final CallTable table;
    private final Label words;
    private final Button start;
    private final Button keep;
    private CallRun run;
    private CallDraft now;
    private boolean keeping;
    /** Why the last call was refused; stands until the next answer. */
    private String refusal = "";

    CallStage(Composite parent, PageContext context, TrainingDoors doors, CallRun run, Runnable back) {
        this.context = context;
        this.doors = doors;
        this.run = run;
        this.back = back;
        this.now = CallDraft.of(run.round().id(), run.codes().get(0));
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite columns = Fit.grow(controls.box(box, 2));
        Composite left = controls.card(columns, 1);
        left.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        title = Fit.wide(controls.label(left, Type.HEADING, ""));
        clock = new Badge(left, theme, Type.TITLE, new Mark("", Shape.RING, Meaning.NEUTRAL));
        photo = new StripPhoto(left, context, doors.blind().attachments());
        drawing = new StripDrawing(left, theme, StripSize.LARGE);
        GridData data = new GridData(SWT.LEFT, SWT.FILL, false, true);
        data.minimumHeight = drawing.minimumHeight();
        drawing.setLayoutData(data);
        drawing.onAnswer((role, seen) -> answered());
        outcome = new Form(left, theme).choice(TrainingUiWords.get("call.outcome"), outcomes());
        table = new CallTable(columns, theme, this::open);
        Fit.grow(table.control());
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.wide(controls.box(box, 3));
        start = Wide.button(controls.button(bar, TrainingUiWords.get("call.start"), this::start), theme);
        Wide.button(controls.button(bar, TrainingUiWords.get("call.back"), back), theme);
        keep = Wide.button(controls.mainButton(bar, TrainingUiWords.get("call.keep"), this::enter), theme);
        Enter.heard(box, this::enter);
        new PageKeys(box, Map.of(SWT.F9, this::start, (int) SWT.ESC, back));
        open(run.next(doors.now()).orElse(run.codes().get(0)));
        tick();
    }

    private static List<String> outcomes() {
        List<String> all = new ArrayList<>(List.of(TrainingUiWords.get("call.outcome.lines")));
        Arrays.stream(Outcome.values()).map(each -> Mark.of(each).word()).forEach(all::add);
        return all;
    }

    Composite control() {
        return box;
    }

    void focus() {
        if (drawing.editable()) {
            drawing.setFocus();
        } else if (start.isEnabled()) {
            start.setFocus();
        } else {
            table.control().setFocus();
        }
    }

    /** Turns to a strip: every line is unanswered, unless it is called. */
    private void open(String code) {
        now = CallDraft.of(run.round().id(), code);
        refusal = "";
        keeping = false;
        outcome.control().select(0);
        Optional<Call> called = run.call(code);
        drawing.strip(run.round().plan().format(), marks());
        called.ifPresent(call -> drawing.answers(call.strip().lines()));
        show();
    }

    private Map<LineRole, String> marks() {
        return doors.blind()
                .method(run.round().plan().method(), doors.now())
                .map(Method::marks)
                .orElse(Map.of());
    }

    private void show() {
        boolean may =
                run.started(now.code()).isPresent() && run.call(now.code()).isEmpty();
        drawing.editable(may);
        outcome.control().setEnabled(may);
        photo.show(Optional.ofNullable(run.round().photographs().get(now.code()))
                .filter(picture -> run.started(now.code()).isPresent()));
        title.setText(TrainingUiWords.get(
                "call.title", now.code(), run.called(), run.codes().size()));
        told();
    }

    private void start() {
        if (start.isEnabled()) {
            run.start(now.code(), doors.now());
            show();
            if (run.pictured(now.code())) {
                drawing.setFocus();
            } else {
                run.next(doors.now()).filter(next -> !next.equals(now.code())).ifPresent(this::open);
                focus();
            }
        }
    }

    private void answered() {
        refusal = "";
        // of two answers the first is the time of reading
        now = now.read(doors.now());
        told();
    }

    private void enter() {
        if (drawing.editable() && drawing.complete() && !keeping) {
            keeping = true;
            refusal = "";
            keep(call(drawing.answers()));
        } else if (run.over()) {
            back.run();
        }
    }

    private Call call(Map<LineRole, Seen> lines) {
        Strip strip = new Strip(run.round().plan().format(), lines);
        Call said = Call.ofLines(now.code(), strip, run.started(now.code()), now.read());
        int chosen = outcome.control().getSelectionIndex();
        return chosen < 1
                ? said
                : new Call(said.code(), strip, Outcome.values()[chosen - 1], said.started(), said.read());
    }

    private void keep(Call call) {
        context.jobs()
                .run(
                        TrainingUiWords.get("call.keeping"),
                        progress -> doors.blind()
                                .rounds()
                                .call(
                                        run.round().id(),
                                        run.reader(),
                                        List.of(call),
                                        Optional.empty(),
                                        Actor.of(run.reader())),
                        this::kept,
                        failure -> {
                            keeping = false;
                            refusal = String.valueOf(failure.getMessage());
                            told();
                        });
    }

    private void kept(Round round) {
        run.undo(now.code());
        run = run.with(round);
        if (!box.isDisposed()) {
            open(run.next(doors.now()).orElse(now.code()));
            focus();
        }
    }

    private void tick() {
        if (!box.isDisposed()) {
            told();
            box.getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    private void told() {
        Instant at = doors.now();
        table.show(run, at, Optional.of(now.code()));
        Mark mark = CallTable.mark(run, now.code(), at);
        if (!mark.equals(clock.shown())) {
            clock.show(mark);
        }
        boolean pictured = run.pictured(now.code());
        start.setText(TrainingUiWords.get(pictured ? "call.start.photo" : "call.start"));
        start.setEnabled(run.phase(now.code(), at) == Phase.WAITING);
        keep.setText(TrainingUiWords.get(run.over() ? "call.done" : "call.keep"));
        keep.setEnabled(run.over() || drawing.editable() && drawing.complete() && !keeping);
        say(refusal.isEmpty() ? needed(at, pictured) : refusal);
    }

    private String needed(Instant at, boolean pictured) {
        if (run.over()) {
            return TrainingUiWords.get("call.over");
        }
        return switch (run.phase(now.code(), at)) {
            case WAITING -> TrainingUiWords.get(pictured ? "call.needed.photo" : "call.needed.waiting", now.code());
            case CALLED -> TrainingUiWords.get("call.needed.called", now.code());
            case DEVELOPING -> TrainingUiWords.get("call.needed.developing");
            case OPEN, MISSED -> TrainingUiWords.get(drawing.complete() ? "call.needed.keep" : "call.needed.answer");
        };
    }

    private void say(String text) {
        if (!words.getText().equals(text)) {
            words.setForeground(context.theme()
                    .color(
                            refusal.isEmpty()
                                    ? context.theme().palette().ink()
                                    : context.theme().tone(Meaning.ALARM).ink()));
            words.setText(text);
            words.requestLayout();
        }
    }

    /** Returns what must survive in another look. */
    CallDraft draft() {
        return now.answers(drawing.answers());
    }

    /** Takes up what was half answered. */
    void restore(CallDraft draft) {
        open(draft.code());
        now = draft;
        drawing.answers(draft.answers());
        told();
    }

    StripDrawing drawing() {
        return drawing;
    }

    CallRun run() {
        return run;
    }

    String said() {
        return words.getText();
    }
}
