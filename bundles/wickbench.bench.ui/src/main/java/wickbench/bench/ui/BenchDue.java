package wickbench.bench.ui;

import java.util.List;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunState;
import wickbench.bench.run.Runs;
import wickbench.bench.run.StripState;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** What the runs of this station ask for now. */
@Component
public final class BenchDue implements DueSource {
    private static final int MOST = 3;
    private static final String PAGE = "bench";

    private final Runs runs;

    @Activate
    public BenchDue(@Reference Runs runs) {
        this.runs = runs;
    }

    @Override
    public List<Due> due() {
        Moment now = runs.now();
        return runs.open().stream()
                .map(Run::state)
                .flatMap(run -> due(run, now))
                .limit(MOST)
                .toList();
    }

    private static Stream<Due> due(RunState run, Moment now) {
        Stream<Due> open =
                run.in(Phase.OPEN, now).stream().map(strip -> due(strip, "due.open", Shape.TRIANGLE, Meaning.ALARM));
        Stream<Due> missed =
                run.in(Phase.MISSED, now).stream().map(strip -> due(strip, "due.missed", Shape.CROSS, Meaning.CAUTION));
        Due underWay =
                new Due(new Mark(FlowWords.get("due.run"), Shape.SQUARE, Meaning.NOTICE), PAGE, Stage.CLOCK.code());
        return Stream.of(open, missed, Stream.of(underWay)).flatMap(some -> some);
    }

    private static Due due(StripState strip, String word, Shape shape, Meaning meaning) {
        return new Due(new Mark(FlowWords.get(word, strip.number()), shape, meaning), PAGE, Stage.CLOCK.code());
    }
}
