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
import wickbench.api.attachment.Attachments;
import wickbench.api.reading.Outcome;
import wickbench.shell.PageContext;
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

/** What a reader has before them while they call: the strip with its clock, all strips, and what is needed next. */
final class CallBoard {
    private final Theme theme;
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

    /** What a reader does. */
    interface Reader {
        void start();

        void answered();

        void keep();

        void back();

        void choose(String code);
    }

    CallBoard(Composite parent, PageContext context, Attachments attachments, Reader reader) {
        theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        // above both columns, or a small window at a large text size would cut the lowest line off
        Composite head = Fit.wide(controls.box(box, 2));
        title = Fit.wide(controls.label(head, Type.HEADING, ""));
        clock = Fit.right(new Badge(head, theme, Type.TITLE, new Mark("", Shape.RING, Meaning.NEUTRAL)));
        Composite columns = Fit.grow(controls.box(box, 2));
        Composite left = controls.box(columns, 1);
        left.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        photo = new StripPhoto(left, context, attachments);
        drawing = new StripDrawing(left, theme, StripSize.LARGE);
        GridData data = new GridData(SWT.LEFT, SWT.FILL, false, true);
        data.minimumHeight = drawing.minimumHeight();
        drawing.setLayoutData(data);
        drawing.onAnswer((role, seen) -> reader.answered());
        Composite right = Fit.grow(controls.box(columns, 1));
        table = new CallTable(right, theme, reader::choose);
        Fit.grow(table.control());
        outcome = new Form(right, theme).choice(TrainingUiWords.get("call.outcome"), outcomes());
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.wide(controls.box(box, 3));
        start = Wide.button(controls.button(bar, TrainingUiWords.get("call.start"), reader::start), theme);
        Wide.button(controls.button(bar, TrainingUiWords.get("call.back"), reader::back), theme);
        keep = Wide.button(controls.mainButton(bar, TrainingUiWords.get("call.keep"), reader::keep), theme);
        Enter.heard(box, reader::keep);
        new PageKeys(box, Map.of(SWT.F9, reader::start, (int) SWT.ESC, reader::back));
    }

    private static List<String> outcomes() {
        List<String> all = new ArrayList<>(List.of(TrainingUiWords.get("call.outcome.lines")));
        Arrays.stream(Outcome.values()).map(each -> Mark.of(each).word()).forEach(all::add);
        return all;
    }

    Composite control() {
        return box;
    }

    StripDrawing drawing() {
        return drawing;
    }

    /** Returns what the reader says it means; empty where that is what the lines say. */
    Optional<Outcome> outcome() {
        int chosen = outcome.control().getSelectionIndex();
        return chosen < 1 ? Optional.empty() : Optional.of(Outcome.values()[chosen - 1]);
    }

    void freshOutcome() {
        outcome.control().select(0);
    }

    boolean mayStart() {
        return start.isEnabled();
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

    /** Shows the strip with this code, to be answered where it is started and not called. */
    void strip(CallRun run, String code) {
        boolean may = run.started(code).isPresent() && run.call(code).isEmpty();
        drawing.editable(may);
        outcome.control().setEnabled(may);
        photo.show(Optional.ofNullable(run.round().photographs().get(code))
                .filter(picture -> run.started(code).isPresent()));
        title.setText(TrainingUiWords.get(
                "call.title", code, run.called(), run.codes().size()));
    }

    /**
     * Tells how far everything is.
     *
     * @param refusal why the last call was not kept; empty when it was
     */
    void tell(CallRun run, String code, boolean keeping, String refusal, Instant at) {
        table.show(run, at, Optional.of(code));
        Mark mark = CallTable.mark(run, code, at);
        if (!mark.equals(clock.shown())) {
            clock.show(mark);
        }
        start.setText(TrainingUiWords.get(run.pictured(code) ? "call.start.photo" : "call.start"));
        start.setEnabled(run.phase(code, at) == Phase.WAITING);
        keep.setText(TrainingUiWords.get(run.over() ? "call.done" : "call.keep"));
        keep.setEnabled(run.over() || drawing.editable() && drawing.complete() && !keeping);
        say(refusal.isEmpty() ? needed(run, code, at) : refusal, refusal.isEmpty());
    }

    private String needed(CallRun run, String code, Instant at) {
        if (run.over()) {
            return TrainingUiWords.get("call.over");
        }
        return switch (run.phase(code, at)) {
            case WAITING -> TrainingUiWords.get(run.pictured(code) ? "call.needed.photo" : "call.needed.waiting", code);
            case CALLED -> TrainingUiWords.get("call.needed.called", code);
            case DEVELOPING -> TrainingUiWords.get("call.needed.developing");
            case OPEN, MISSED -> TrainingUiWords.get(drawing.complete() ? "call.needed.keep" : "call.needed.answer");
        };
    }

    private void say(String text, boolean well) {
        if (!words.getText().equals(text)) {
            words.setForeground(theme.color(
                    well ? theme.palette().ink() : theme.tone(Meaning.ALARM).ink()));
            words.setText(text);
            words.requestLayout();
        }
    }
}
