package wickbench.training.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Actor;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.reading.Strip;
import wickbench.shell.PageContext;
import wickbench.training.Call;
import wickbench.training.Round;

/** The strips of a round before one reader, called one after the other by their codes; nothing here knows the key. */
final class CallStage implements CallBoard.Reader {
    private static final int TICK_MILLIS = 250;

    private final PageContext context;
    private final TrainingDoors doors;
    private final Runnable leave;
    private final CallBoard board;
    private CallRun run;
    private CallDraft now;
    private Map<LineRole, String> marks = Map.of();
    private boolean keeping;
    /** Why the last call was refused; stands until the next answer. */
    private String refusal = "";

    CallStage(Composite parent, PageContext context, TrainingDoors doors, CallRun run, Runnable leave) {
        this.context = context;
        this.doors = doors;
        this.run = run;
        this.leave = leave;
        this.now = CallDraft.of(run.round().id(), run.codes().get(0));
        board = new CallBoard(parent, context, doors.blind().attachments(), this);
        choose(run.next(doors.now()).orElse(run.codes().get(0)));
        tick();
        readMarks();
    }

    /** Letters beside the lines come from the method, where the bench is installed. */
    private void readMarks() {
        context.jobs()
                .run(
                        TrainingUiWords.get("rounds.reading"),
                        progress -> doors.blind()
                                .method(run.round().plan().method(), doors.now())
                                .map(Method::marks)
                                .orElse(Map.of()),
                        found -> {
                            marks = found;
                            if (!board.control().isDisposed() && !found.isEmpty()) {
                                Map<LineRole, wickbench.api.method.Seen> answers =
                                        board.drawing().answers();
                                board.drawing().strip(run.round().plan().format(), marks);
                                board.drawing().answers(answers);
                            }
                        });
    }

    Composite control() {
        return board.control();
    }

    void focus() {
        board.focus();
    }

    /** Turns to a strip: every line is unanswered, unless it is called. */
    @Override
    public void choose(String code) {
        now = CallDraft.of(run.round().id(), code);
        refusal = "";
        keeping = false;
        board.freshOutcome();
        board.drawing().strip(run.round().plan().format(), marks);
        run.call(code).ifPresent(call -> board.drawing().answers(call.strip().lines()));
        show();
    }

    private void show() {
        board.strip(run, now.code());
        tell();
    }

    private void tell() {
        board.tell(run, now.code(), keeping, refusal, doors.now());
    }

    @Override
    public void start() {
        if (board.mayStart()) {
            run.start(now.code(), doors.now());
            show();
            if (!run.pictured(now.code())) {
                run.next(doors.now()).filter(next -> !next.equals(now.code())).ifPresent(this::choose);
            }
            focus();
        }
    }

    /** Of two answers the first is the time of reading. */
    @Override
    public void answered() {
        refusal = "";
        now = now.read(doors.now());
        tell();
    }

    @Override
    public void keep() {
        if (board.drawing().editable() && board.drawing().complete() && !keeping) {
            keeping = true;
            refusal = "";
            keep(call());
        } else if (run.over()) {
            back();
        }
    }

    @Override
    public void back() {
        leave.run();
    }

    private Call call() {
        Strip strip = new Strip(run.round().plan().format(), board.drawing().answers());
        Call said = Call.ofLines(now.code(), strip, run.started(now.code()), now.read());
        return board.outcome()
                .map(outcome -> new Call(said.code(), strip, outcome, said.started(), said.read()))
                .orElse(said);
    }

    private void keep(Call call) {
        String id = run.round().id();
        Actor by = Actor.of(run.reader());
        context.jobs()
                .run(
                        TrainingUiWords.get("call.keeping"),
                        progress -> doors.blind().rounds().call(id, by.who(), List.of(call), Optional.empty(), by),
                        this::kept,
                        failure -> {
                            keeping = false;
                            refusal = String.valueOf(failure.getMessage());
                            if (!board.control().isDisposed()) {
                                tell();
                            }
                        });
    }

    private void kept(Round round) {
        run.undo(now.code());
        run = run.with(round);
        if (!board.control().isDisposed()) {
            choose(run.next(doors.now()).orElse(now.code()));
            focus();
        }
    }

    private void tick() {
        if (!control().isDisposed()) {
            tell();
            control().getDisplay().timerExec(TICK_MILLIS, this::tick);
        }
    }

    /** Returns what must survive in another look. */
    CallDraft draft() {
        return now.answers(board.drawing().answers());
    }

    /** Takes up what was half answered. */
    void restore(CallDraft draft) {
        choose(draft.code());
        now = draft;
        board.drawing().answers(draft.answers());
        tell();
    }

    CallRun run() {
        return run;
    }
}
