package wickbench.bench.ui;

import java.util.List;
import java.util.function.Consumer;
import wickbench.api.journal.Entry;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.widgets.Jobs;

/** Records one reading after another; while one is under way, no other begins. */
final class StripRecorder {
    private final Jobs jobs;
    private final BenchDoors doors;
    private final Consumer<Sealed> kept;
    private final Consumer<Exception> refused;
    private boolean busy;

    StripRecorder(Jobs jobs, BenchDoors doors, Consumer<Sealed> kept, Consumer<Exception> refused) {
        this.jobs = jobs;
        this.doors = doors;
        this.kept = kept;
        this.refused = refused;
    }

    boolean busy() {
        return busy;
    }

    void record(Reading reading, PersonId by) {
        busy = true;
        jobs.run(
                BenchUiWords.get("recording"),
                progress -> keep(reading, by),
                one -> end(kept, one),
                failure -> end(refused, failure));
    }

    private Sealed keep(Reading reading, PersonId by) {
        Kept one = doors.door().record(List.of(reading), by).get(0);
        return new Sealed(one, doors.journal().entry(one.ref()).map(Entry::leaf));
    }

    private <T> void end(Consumer<T> hears, T what) {
        busy = false;
        hears.accept(what);
    }
}
