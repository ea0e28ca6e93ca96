package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunListener;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;

/** Holds the run that the page is at, and brings what it answers back to the page's thread. */
final class RunHand {
    private final PageContext context;
    private final Runnable changed;
    private final Consumer<List<Alarm>> rings;
    private Optional<Run> run = Optional.empty();
    private Optional<Run.Listening> listening = Optional.empty();

    RunHand(PageContext context, Runnable changed, Consumer<List<Alarm>> rings) {
        this.context = context;
        this.changed = changed;
        this.rings = rings;
    }

    Optional<RunState> state() {
        return run.map(Run::state);
    }

    boolean empty() {
        return run.isEmpty();
    }

    void take(Run begun) {
        run = Optional.of(begun);
        listening = Optional.of(begun.listen(new RunListener() {
            @Override
            public void changed(RunState state) {
                context.update(changed);
            }

            @Override
            public void ring(List<Alarm> alarms) {
                context.update(() -> rings.accept(alarms));
            }
        }));
    }

    /** The page is closed or the run is over; a run that is not over goes on. */
    void leave() {
        listening.ifPresent(Run.Listening::close);
        listening = Optional.empty();
        run = Optional.empty();
    }

    void happened(RunEvent event, Consumer<RunState> done, Consumer<String> refused) {
        run.ifPresent(live -> then(live.happened(event, live.now()), done, refused));
    }

    void judged(Consumer<List<RunActs.Judged>> done, Consumer<String> refused) {
        // as work of the page, so that the page counts as ready only when it shows what came of it
        run.ifPresent(live -> context.jobs()
                .run(
                        FlowWords.get("judging"),
                        progress -> live.judged().join(),
                        judged -> done.accept(pair(live.state(), judged)),
                        failure -> refused.accept(words(failure))));
    }

    void close(Consumer<RunState> done, Consumer<String> refused) {
        run.ifPresent(live -> then(live.close(), done, refused));
    }

    /** Goes on with what comes of it, or says why nothing does. */
    <T> void then(CompletableFuture<T> future, Consumer<T> done, Consumer<String> refused) {
        future.whenComplete((value, failure) -> context.update(() -> {
            if (failure == null) {
                done.accept(value);
            } else {
                refused.accept(words(failure));
            }
            changed.run();
        }));
    }

    private static String words(Throwable failure) {
        Throwable cause = failure.getCause() == null ? failure : failure.getCause();
        return String.valueOf(cause.getMessage());
    }

    private static List<RunActs.Judged> pair(RunState state, List<RecordedReading> judged) {
        List<RunActs.Judged> pairs = new ArrayList<>();
        for (StripState strip : state.strips()) {
            judged.stream()
                    .filter(one -> one.reading().equals(strip.reading()))
                    .findFirst()
                    .ifPresent(one -> pairs.add(new RunActs.Judged(strip, one)));
        }
        return pairs;
    }
}
