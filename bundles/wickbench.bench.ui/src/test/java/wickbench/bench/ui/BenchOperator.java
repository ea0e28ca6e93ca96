package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** Works at the bench by keys alone, and knows only what the page says. */
final class BenchOperator {
    private static final Pattern STRIP = Pattern.compile("strip (\\d+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TIME = Pattern.compile("in (\\d+):(\\d\\d)");

    private final TestDesk desk;
    private final Keyboard keys;
    private final RunFlow flow;
    private final BenchTime time;
    private final List<String> told = new ArrayList<>();

    BenchOperator(TestDesk desk, RunFlow flow, BenchTime time) {
        this.desk = desk;
        this.keys = new Keyboard(desk);
        this.flow = flow;
        this.time = time;
    }

    /** Enters a strip; who, method and lot stand there already when they are those of the strip before. */
    void enter(String method, String lot, String sample, String place, int control) {
        EntryForm form = flow.newRun().form();
        if (!form.text(Item.METHOD).equals(method)) {
            await("the method's field", () -> form.control(Item.METHOD).setFocus());
            ((Text) form.control(Item.METHOD)).selectAll();
            keys.type(method);
            keys.enter();
            tabs(2);
            keys.type(lot);
            tabs(1);
        }
        await("the sample's field", () -> form.control(Item.SAMPLE).setFocus());
        keys.type(sample);
        tabs(2);
        keys.type(place);
        if (control > 0) {
            form.control(Item.CONTROL).setFocus();
            for (int i = 0; i < control; i++) {
                keys.key(SWT.ARROW_DOWN);
            }
        }
        int before = flow.newRun().strips().size();
        if (control > 0) {
            form.control(Item.SAMPLE).setFocus();
        }
        keys.enter();
        await("entering " + sample, () -> flow.newRun().strips().size() == before + 1);
    }

    /** Waits, and leaves a picture of what was there when it waited in vain. */
    private void await(String what, BooleanSupplier so) {
        try {
            desk.await(so);
        } catch (AssertionError vain) {
            try {
                throw new AssertionError(what + "; see " + desk.picture("operator-stuck") + "; " + told, vain);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    void plan() {
        keys.key(SWT.F5);
        await("stage " + flow.stages().front(), () -> flow.stages().front() == Stage.PLAN);
        PlanStage plan = (PlanStage) flow.stages().at(Stage.PLAN);
        await("stage " + flow.stages().front(), () -> plan.said().equals(FlowWords.get("plan.enter")));
        await("stage " + flow.stages().front(), () -> !plan.gantt().inWords().equals(FlowWords.get("plan.none")));
    }

    void begin() {
        keys.enter();
        await(
                "stage " + flow.stages().front(),
                () -> flow.stages().front() == Stage.CLOCK
                        && flow.timetable().plan().isPresent());
    }

    ClockStage clock() {
        return (ClockStage) flow.stages().at(Stage.CLOCK);
    }

    ReadStage reading() {
        return (ReadStage) flow.stages().at(Stage.READ);
    }

    void number(int strip) {
        keys.type(Integer.toString(strip));
        keys.enter();
    }

    void start(int strip) {
        number(strip);
        await("start of " + strip, () -> clock().said().equals(FlowWords.get("said.started", strip)));
    }

    /** Opens a strip by its number, answers its lines with these keys, and keeps them. */
    void read(int strip, String answers) {
        number(strip);
        await(
                "stage " + flow.stages().front(),
                () -> flow.stages().front() == Stage.READ && reading().drawing().isFocusControl());
        keys.type(answers);
        await("stage " + flow.stages().front(), () -> reading().said().equals(FlowWords.get("read.enter")));
        keys.enter();
        await(
                "stage " + flow.stages().front(),
                () -> reading().said().startsWith("Recorded")
                        || reading().said().startsWith("Kept"));
    }

    /** Goes on until every strip is done, doing what the page says. */
    void work(Map<Integer, String> answers) {
        for (int act = 0; act < 400; act++) {
            await("stage " + flow.stages().front(), () -> flow.stages().front() != Stage.READ);
            if (flow.stages().front() == Stage.NEXT) {
                return;
            }
            String words = settled();
            told.add(words);
            if (words.equals(FlowWords.get("act.over"))) {
                return;
            }
            act(words, answers);
        }
        throw new AssertionError("never done; told last: " + told.subList(Math.max(0, told.size() - 12), told.size()));
    }

    private void act(String words, Map<Integer, String> answers) {
        Matcher number = STRIP.matcher(words);
        Matcher in = TIME.matcher(words);
        if (words.contains("in hand") && number.find()) {
            int strip = Integer.parseInt(number.group(1));
            read(strip, answers.get(strip));
            time.seconds(20);
            keys.enter();
        } else if (in.find()) {
            time.pass(Duration.ofSeconds(Long.parseLong(in.group(1)) * 60 + Long.parseLong(in.group(2))));
        } else if (words.startsWith("Start") && number.find()) {
            int strip = Integer.parseInt(number.group(1));
            start(strip);
            await("stage " + flow.stages().front(), () -> clock().said().equals(FlowWords.get("said.started", strip)));
        } else {
            time.seconds(1);
        }
    }

    /** Waits until the page says what it says by the time that it is now. */
    private String settled() {
        flow.stages().at(Stage.CLOCK).tick(flow.hand().now());
        await("stage " + flow.stages().front(), () -> !flow.timetable().underWay());
        flow.stages().at(Stage.CLOCK).tick(flow.hand().now());
        return clock().toDo();
    }

    void tabs(int count) {
        for (int i = 0; i < count; i++) {
            keys.tab();
        }
    }

    void finish() {
        if (flow.stages().front() != Stage.NEXT) {
            keys.key(SWT.F12);
        }
        await("stage " + flow.stages().front(), () -> flow.stages().front() == Stage.NEXT);
        NextStage next = (NextStage) flow.stages().at(Stage.NEXT);
        await("stage " + flow.stages().front(), () -> next.said().equals(FlowWords.get("next.over")));
        keys.enter();
        await("stage " + flow.stages().front(), () -> flow.stages().front() == Stage.NEW);
        assertThat(flow.hand().state()).isEmpty();
    }
}
