package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import wickbench.api.person.PersonId;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.Alarm;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunListener;
import wickbench.bench.run.RunState;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.Runs;
import wickbench.bench.run.StripState;
import wickbench.shell.PageContext;

/** Holds the run that the page is at, and brings what it answers back to the page's thread. */
final class RunHand {
    private final PageContext context;
    private final Runs runs;
    private final Runnable changed;
    private final Consumer<List<Alarm>> rings;
    private Optional<Run> run = Optional.empty();
    private Optional<Run.Listening> listening = Optional.empty();

    RunHand(PageContext context, Runs runs, Runnable changed, Consumer<List<Alarm>> rings) {
        this.context = context;
        this.runs = runs;
        this.changed = changed;
        this.rings = rings;
    }

    Moment now() {
        return runs.now();
    }

    /** Returns the run under way. */
    Optional<RunState> state() {
        return run.map(Run::state);
    }

    boolean empty() {
        return run.isEmpty();
    }

    /** Begins a run and takes it. */
    void begin(List<RunStrip> strips, PersonId by, Runnable done, Consumer<String> refused) {
        then(
                runs.begin(strips, by),
                begun -> {
                    take(begun);
                    done.run();
                },
                refused);
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

    /** Keeps what happened just now; {@code done} hears once it stands on the disk, {@code refused} why it does not. */
    void happened(RunEvent event, Consumer<RunState> done, Consumer<String> refused) {
        run.ifPresent(live -> then(live.happened(event, live.now()), done, refused));
    }

    /** Judges what has been read so far, by number of strip. */
    void judged(Consumer<List<Judged>> done, Consumer<String> refused) {
        // as work of the page, so that the page counts as ready only when it shows what came of it
        run.ifPresent(live -> context.jobs()
                .run(
                        FlowWords.get("judging"),
                        progress -> live.judged().join(),
                        judged -> done.accept(pair(live.state(), judged)),
                        failure -> refused.accept(words(failure))));
    }

    /** Ends the run and leaves it. */
    void close(Consumer<RunState> done, Consumer<String> refused) {
        run.ifPresent(live -> then(
                live.close(),
                closed -> {
                    leave();
                    done.accept(closed);
                },
                refused));
    }

    /** Goes on with what comes of it, or says why nothing does. */
    private <T> void then(CompletableFuture<T> future, Consumer<T> done, Consumer<String> refused) {
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

    private static List<Judged> pair(RunState state, List<RecordedReading> judged) {
        List<Judged> pairs = new ArrayList<>();
        for (StripState strip : state.strips()) {
            judged.stream()
                    .filter(one -> one.reading().equals(strip.reading()))
                    .findFirst()
                    .ifPresent(one -> pairs.add(new Judged(strip, one)));
        }
        return pairs;
    }
}
