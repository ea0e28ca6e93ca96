package wickbench.bench;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.reading.ReadingDoor;
import wickbench.bench.run.Clocks;
import wickbench.bench.run.MachineClocks;
import wickbench.bench.run.Moment;
import wickbench.bench.run.OpenRuns;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.Runs;

/** The runs of this home: they go on whichever page is open, and come back after the program has ended. */
@Component
public final class RunHouse implements Runs {
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(RunHouse::daemon);
    private final ScheduledExecutorService bells = Executors.newSingleThreadScheduledExecutor(RunHouse::daemon);
    private final OpenRuns runs;

    @Activate
    public RunHouse(
            @Reference Home home, @Reference Journal journal, @Reference Index index, @Reference ReadingDoor door) {
        runs = new OpenRuns(
                home.folder().resolve("runs"),
                clocks(home),
                thread,
                this::later,
                door,
                (draft, run) -> append(journal, index, draft),
                () -> Draft.randomId(home.chance()));
    }

    private static Clocks clocks(Home home) {
        return home.simulatedSeed().isPresent()
                ? MachineClocks.simulated(home.clock())
                : MachineClocks.of(home.clock(), Draft.randomId(home.chance()).toString());
    }

    private static Thread daemon(Runnable act) {
        Thread thread = new Thread(act, "run");
        thread.setDaemon(true);
        return thread;
    }

    private static void append(Journal journal, Index index, Draft draft) {
        // a crash between the entry and the end of the file brings the run back once more
        if (index.find(draft.id()).isEmpty()) {
            journal.append(List.of(draft));
        }
    }

    private void later(Duration wait, Runnable act) {
        if (!bells.isShutdown()) {
            bells.schedule(act, wait.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    @Deactivate
    public void close() {
        bells.shutdownNow();
        thread.shutdown();
        runs.close();
    }

    @Override
    public List<Run> open() {
        return runs.open();
    }

    @Override
    public CompletableFuture<Run> begin(List<RunStrip> strips, PersonId by) {
        return runs.begin(strips, by);
    }

    @Override
    public Moment now() {
        return runs.now();
    }
}
