package wickbench.bench.run;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;

/** A run with its file, its watch and those who hear of it. What happens to it happens on one thread. */
final class LiveRun implements Run {
    private final Station station;
    private final RunFile file;
    private final Executor thread;
    private final Watch watch;
    private final List<RunListener> listeners = new CopyOnWriteArrayList<>();
    private volatile RunState state;

    /** What a run needs of its station. */
    record Station(Clocks clocks, Later later, ReadingDoor door, Ledgering ledger) {}

    /** Puts the entry of a finished run into the journal, once. */
    @FunctionalInterface
    interface Ledgering {
        void keep(RunState run);
    }

    LiveRun(Station station, RunFile file, Executor thread, RunState first) {
        this.station = station;
        this.file = file;
        this.thread = thread;
        state = first;
        watch = new Watch(
                station.clocks(),
                station.later(),
                this::state,
                alarms -> listeners.forEach(listener -> listener.ring(alarms)),
                by -> happened(new RunEvent.ClockMoved(by), station.clocks().now()));
    }

    /** Begins to ring and to record what was left to be recorded. */
    LiveRun live() {
        watch.begin();
        later(this::settle);
        return this;
    }

    @Override
    public RunState state() {
        return state;
    }

    @Override
    public Moment now() {
        return station.clocks().now();
    }

    @Override
    public CompletableFuture<RunState> happened(RunEvent event, Moment at) {
        return later(() -> {
            keep(event, at);
            return settle();
        });
    }

    @Override
    public CompletableFuture<List<RecordedReading>> judged() {
        return later(() -> station.door().judge(new Settlement(state, now()).read()));
    }

    @Override
    public CompletableFuture<RunState> close() {
        return later(() -> {
            settle();
            RunState closed = Moves.apply(state, now(), new RunEvent.Closed());
            station.ledger().keep(state);
            watch.end();
            file.delete();
            tell(closed);
            return closed;
        });
    }

    @Override
    public Listening listen(RunListener listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Lets the run lie; it is brought back from its file. */
    void leave() {
        watch.end();
        file.close();
    }

    private void keep(RunEvent event, Moment at) {
        RunState next = Moves.apply(state, at, event);
        file.append(new Noted(at, event));
        tell(next);
    }

    private void tell(RunState next) {
        state = next;
        listeners.forEach(listener -> listener.changed(next));
    }

    /** Records what may be recorded; controls are judged with all that was read. */
    private RunState settle() {
        List<StripState> ready = new Settlement(state, now()).ready(station.door());
        if (!ready.isEmpty()) {
            List<wickbench.api.reading.Reading> run = new Settlement(state, now())
                    .read().stream()
                            .filter(reading -> inJournalOrReady(reading, ready))
                            .toList();
            List<Kept> kept = station.door().record(run, state.by());
            ready.forEach(strip -> keep(
                    new RunEvent.Recorded(
                            strip.number(),
                            kept.get(run.indexOf(strip.reading())).id()),
                    now()));
        }
        return state;
    }

    private boolean inJournalOrReady(wickbench.api.reading.Reading reading, List<StripState> ready) {
        return state.strips().stream()
                .filter(strip -> strip.reading().equals(reading))
                .anyMatch(strip -> strip.recorded().isPresent() || ready.contains(strip));
    }

    private <T> CompletableFuture<T> later(Supplier<T> act) {
        return CompletableFuture.supplyAsync(act, thread);
    }
}
