package wickbench.bench.ui;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Enter;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.PageKeys;
import wickbench.widgets.Scroller;
import wickbench.widgets.Shape;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;
import wickbench.widgets.Wide;

/** One strip before one reader: the lines are answered, kept by Enter, and said what they mean. */
final class ReadStage implements RunStage {
    private final PageContext context;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final Function<RunStrip, Optional<Method>> methods;
    private final RunActs acts;
    private final Composite box;
    private final Label title;
    private final Badge clock;
    private final StripDrawing drawing;
    private final SecondReader second;
    private final Scroller side;
    private final ReadVerdict verdict;
    private final StripPhotos photos;
    private final Label words;
    private final Button keep;
    private final Button lost;
    private int number;
    private boolean keeping;
    private boolean looked;
    /** Why the last act was refused; stands until the next one. */
    private String refusal = "";

    /** @param methods finds the method of a strip, while it is in force */
    ReadStage(
            Composite parent,
            PageContext context,
            BenchDoors doors,
            RunHand hand,
            RunTimetable timetable,
            Function<RunStrip, Optional<Method>> methods,
            RunActs acts) {
        this.context = context;
        this.hand = hand;
        this.timetable = timetable;
        this.methods = methods;
        this.acts = acts;
        Theme theme = context.theme();
        Controls controls = theme.controls();
        box = controls.box(parent, 1);
        Composite columns = Fit.grow(controls.box(box, 2));
        Composite left = controls.card(columns, 1);
        left.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        title = Fit.wide(controls.label(left, Type.HEADING, ""));
        clock = new Badge(left, theme, Type.TITLE, new Mark("", Shape.RING, Meaning.NEUTRAL));
        drawing = lowerIfItMust(new StripDrawing(left, theme, StripSize.LARGE));
        drawing.onAnswer((role, seen) -> answered());
        side = new Scroller(columns, theme);
        Fit.grow(side.control());
        second = new SecondReader(side.content(), context, doors, this::secondNamed);
        verdict = new ReadVerdict(side.content(), context);
        words = Fit.wide(controls.text(box, Type.STRONG, ""));
        Composite bar = Fit.wide(controls.box(box, 4));
        photos = new StripPhotos(bar, box, context, doors, hand::state);
        lost = Wide.button(controls.button(bar, FlowWords.get("read.lost"), this::lost), theme);
        Wide.button(controls.button(bar, FlowWords.get("read.back"), this::back), theme);
        keep = Wide.button(controls.mainButton(bar, FlowWords.get("read.keep"), this::enter), theme);
        Enter.heard(box, this::enter);
        new PageKeys(box, Map.of((int) SWT.ESC, this::back, SWT.F11, this::lost, SWT.F8, photos::choose));
    }

    private static StripDrawing lowerIfItMust(StripDrawing drawing) {
        GridData data = new GridData(SWT.LEFT, SWT.FILL, false, true);
        data.minimumHeight = drawing.minimumHeight();
        drawing.setLayoutData(data);
        return drawing;
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
        return drawing;
    }

    SecondReader second() {
        return second;
    }

    String said() {
        return words.getText();
    }

    String time() {
        return clock.shown().word();
    }

    private Optional<StripState> strip() {
        return hand.state().flatMap(run -> run.strip(number));
    }

    private Phase phase() {
        return strip().map(strip -> strip.phase(hand.now())).orElse(Phase.SKIPPED);
    }

    /** Opens a strip whose number was confirmed; every line is unanswered, also for a second reader. */
    void open(int confirmed) {
        number = confirmed;
        keeping = false;
        looked = false;
        refusal = "";
        StripState strip = strip().orElseThrow();
        title.setText(FlowWords.get(
                "read.title",
                number,
                strip.strip().unread().sample().code(),
                strip.strip().unread().sample().place()));
        drawing.strip(
                strip.strip().unread().strip().format(),
                methods.apply(strip.strip()).map(method -> method.marks()).orElse(Map.of()));
        boolean again = phase() == Phase.SECOND;
        second.show(again, strip.kept().map(StripState.Answers::by));
        photos.show(number);
        drawing.editable(!again && !phase().over() && phase() != Phase.KEPT);
        verdict.waiting(FlowWords.get(again ? "read.second" : "read.answer"));
        if (phase().over() || phase() == Phase.KEPT) {
            judge();
        }
        tick(hand.now());
    }

    @Override
    public void shown() {
        if (second.asks()) {
            second.focus();
        } else if (drawing.editable()) {
            drawing.setFocus();
        } else {
            keep.setFocus();
        }
    }

    private void secondNamed() {
        drawing.editable(true);
        drawing.setFocus();
        tick(hand.now());
    }

    private void answered() {
        refusal = "";
        if (!looked && (phase() == Phase.OPEN || phase() == Phase.MISSED)) {
            // of two quick answers only the first is the time of reading
            looked = true;
            hand.happened(new RunEvent.Looked(number), run -> {}, this::refused);
        }
        tick(hand.now());
    }

    private void enter() {
        if (!drawing.editable()) {
            back();
        } else if (!drawing.complete() || second.asks()) {
            tick(hand.now());
        } else if (!keeping) {
            keeping = true;
            keep(drawing.answers());
        }
    }

    private void keep(Map<LineRole, wickbench.api.method.Seen> lines) {
        StripState strip = strip().orElseThrow();
        PersonId reader = strip.strip().unread().operator();
        RunEvent event = second.named()
                .<RunEvent>map(other -> new RunEvent.Second(number, other, lines))
                .orElseGet(() -> new RunEvent.Kept(number, reader, lines));
        hand.happened(event, this::kept, this::refused);
    }

    private void kept(RunState run) {
        keeping = false;
        drawing.editable(false);
        if (phase() == Phase.SECOND) {
            open(number);
            shown();
        } else {
            judge();
            keep.setFocus();
            timetable.replan(java.time.Duration.ZERO);
        }
    }

    private void judge() {
        int of = number;
        verdict.judge(hand, of, () -> of == number, this::judged, this::refused);
    }

    private void judged(Judged judged) {
        drawing.answers(judged.reading().reading().strip().lines());
        side.measure();
        tick(hand.now());
    }

    private void refused(String why) {
        keeping = false;
        looked = false;
        refusal = why;
        say(why);
    }

    private void lost() {
        Phase phase = phase();
        RunEvent event = phase == Phase.SECOND ? new RunEvent.NoSecond(number) : new RunEvent.Lost(number);
        hand.happened(
                event,
                run -> {
                    second.show(false, Optional.empty());
                    kept(run);
                },
                this::refused);
    }

    private void back() {
        acts.goOn();
    }

    @Override
    public void tick(Moment now) {
        strip().ifPresent(strip -> show(strip, strip.phase(now), now));
    }

    private void show(StripState strip, Phase phase, Moment now) {
        Mark mark = ReadWords.mark(strip, now);
        if (!mark.equals(clock.shown())) {
            clock.show(mark);
        }
        lost.setText(FlowWords.get(phase == Phase.SECOND ? "read.nobody" : "read.lost"));
        lost.setEnabled(phase == Phase.SECOND || phase == Phase.MISSED);
        boolean may = !drawing.editable() || drawing.complete() && !second.asks();
        keep.setText(FlowWords.get(drawing.editable() ? "read.keep" : "read.on"));
        keep.setEnabled(may && !keeping);
        say(refusal.isEmpty() ? ReadWords.needed(strip, phase, drawing, second) : refusal);
    }

    private void say(String text) {
        if (!words.getText().equals(text)) {
            words.setText(text);
            words.requestLayout();
        }
    }
}
