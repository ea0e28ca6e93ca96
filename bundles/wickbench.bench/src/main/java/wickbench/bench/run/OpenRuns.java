package wickbench.bench.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.person.PersonId;
import wickbench.bench.run.LiveRun.Station;

/** The runs in a folder, each a file of its own. */
public final class OpenRuns implements Runs, AutoCloseable {
    private final Path folder;
    private final Station station;
    private final Executor thread;
    private final Supplier<UUID> ids;
    private final List<LiveRun> live = new ArrayList<>();
    private boolean read;

    /**
     * Makes the keeper of a folder; nothing is read yet.
     *
     * @param thread does one thing after the other
     * @param later wakes the watch of a run, on any thread
     * @param ledger puts the entry of a finished run into the journal, once
     */
    public OpenRuns(
            Path folder,
            Clocks clocks,
            Executor thread,
            Later later,
            wickbench.api.reading.ReadingDoor door,
            java.util.function.BiConsumer<wickbench.api.journal.Draft, RunState> ledger,
            Supplier<UUID> ids) {
        this.folder = folder;
        this.thread = thread;
        this.ids = ids;
        station = new Station(clocks, later, door, run -> ledger.accept(RunEntry.draft(run, run.by()), run));
    }

    @Override
    public synchronized List<Run> open() {
        if (!read) {
            read = true;
            RunFile.in(folder).forEach(this::bringBackOrSay);
        }
        live.removeIf(run -> run.state().closed());
        return List.copyOf(live);
    }

    @Override
    public CompletableFuture<Run> begin(List<RunStrip> strips, PersonId by) {
        return CompletableFuture.supplyAsync(
                () -> {
                    RunEvent.Begun begun = new RunEvent.Begun(ids.get(), by, strips);
                    Moment at = now();
                    RunFile file = RunFile.make(folder, begun.run().toString());
                    file.append(new Noted(at, begun));
                    LiveRun run = new LiveRun(station, file, thread, RunState.begin(at, begun));
                    synchronized (this) {
                        live.add(run);
                    }
                    return run.live();
                },
                thread);
    }

    @Override
    public Moment now() {
        return station.clocks().now();
    }

    /** Lets the runs lie; their files bring them back. */
    @Override
    public synchronized void close() {
        live.stream().filter(run -> !run.state().closed()).forEach(LiveRun::leave);
        live.clear();
    }

    private void bringBackOrSay(Path path) {
        try {
            bringBack(path);
        } catch (BadInput | Refusal | ClassCastException e) {
            throw new Refusal("run.unreadable", RunWords.get("refused.unreadable", path, e.getMessage()));
        }
    }

    private void bringBack(Path path) {
        List<Noted> noted = RunFile.read(path);
        if (noted.isEmpty()) {
            // the power went while the first line was written: nothing had begun for anybody
            RunFile.open(path).delete();
            return;
        }
        RunState state =
                RunState.begin(noted.get(0).at(), (RunEvent.Begun) noted.get(0).event());
        for (Noted next : noted.subList(1, noted.size())) {
            state = Moves.apply(state, next.at(), next.event());
        }
        RunFile file = RunFile.open(path);
        Noted back = new Noted(now(), new RunEvent.Resumed());
        file.append(back);
        live.add(new LiveRun(station, file, thread, Moves.apply(state, back.at(), back.event())).live());
    }
}
