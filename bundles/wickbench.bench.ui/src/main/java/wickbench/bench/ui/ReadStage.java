package wickbench.bench.ui;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** A strip before its reader, with what is asked next and what its answers mean. */
final class ReadStage implements RunStage {
    private final RunHand hand;
    private final RunActs acts;
    private final ReadActs kept;
    private final Composite box;
    private final StripCard card;
    private final SecondReader second;
    private final StripReading reading;
    private final StripPhotos photos;
    private final Label words;
    private final Button keep;
    private final Button lost;

    /** @param methods finds the method of a strip, while it is in force */
    ReadStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            Function<RunStrip, Optional<Method>> methods,
            RunActs acts) {
        this.hand = hand;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite columns = Fit.grow(controls.box(box, 2));
        card = new StripCard(columns, theme);
        Scroller side = new Scroller(columns, theme);
        Fit.grow(side.control());
        second = new SecondReader(side.content(), context, doors, this::secondNamed);
        ReadVerdict verdict = new ReadVerdict(side, context, hand);
        kept = new ReadActs(hand, timetable, this::tick);
        reading = new StripReading(methods, kept, card, second, verdict, this::tick, this::shown);
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.wide(controls.box(box, 4));
        photos = new StripPhotos(bar, box, context, doors, hand::state);
        lost = Wide.button(controls.button(bar, FlowWords.get("read.lost"), reading::nobody), theme);
        Wide.button(controls.button(bar, FlowWords.get("read.back"), acts::goOn), theme);
        keep = Wide.button(controls.mainButton(bar, FlowWords.get("read.keep"), this::enter), theme);
        Enter.heard(box, this::enter);
        new PageKeys(box, Map.of((int) SWT.ESC, acts::goOn, SWT.F11, reading::nobody, SWT.F8, photos::choose));
    }

    @Override
    public Composite control() {
        return box;
    }

    /** Adds the photographs of strips that are recorded by now. */
    void recorded(RunState run) {
        photos.recorded(run);
    }

    StripDrawing drawing() {
        return card.drawing();
    }

    SecondReader second() {
        return second;
    }

    String said() {
        return words.getText();
    }

    /** Opens a strip whose number was confirmed. */
    void open(int number) {
        photos.show(number);
        reading.open(number);
    }

    @Override
    public void shown() {
        if (second.asks()) {
            second.focus();
        } else if (drawing().editable()) {
            drawing().setFocus();
        } else {
            keep.setFocus();
        }
    }

    private void secondNamed() {
        reading.secondNamed();
    }

    private void enter() {
        if (drawing().editable()) {
            reading.keep();
        } else {
            acts.goOn();
        }
    }

    private void tick() {
        tick(hand.now());
    }

    @Override
    public void tick(Moment now) {
        kept.strip().ifPresent(strip -> show(strip, strip.phase(now), now));
    }

    private void show(StripState strip, Phase phase, Moment now) {
        card.tick(strip, now);
        lost.setText(FlowWords.get(phase == Phase.SECOND ? "read.nobody" : "read.lost"));
        lost.setEnabled(phase == Phase.SECOND || phase == Phase.MISSED);
        boolean may = !drawing().editable() || drawing().complete() && !second.asks();
        keep.setText(FlowWords.get(drawing().editable() ? "read.keep" : "read.on"));
        keep.setEnabled(may && !kept.keeping());
        say(kept.refusal().isEmpty() ? ReadWords.needed(strip, phase, drawing(), second) : kept.refusal());
    }

    private void say(String text) {
        if (!words.getText().equals(text)) {
            words.setText(text);
            words.requestLayout();
        }
    }
}
