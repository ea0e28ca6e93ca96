package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RecordedReading;
import wickbench.widgets.Jobs;

/** Has a reading judged while the screen goes on, and forgets the verdict of a reading that has changed meanwhile. */
final class StripJudge {
    private final Jobs jobs;
    private final ReadingDoor door;
    private final Consumer<RecordedReading> judged;
    private final Consumer<Exception> failed;
    private Optional<Reading> asked = Optional.empty();
    private Optional<RecordedReading> verdict = Optional.empty();

    StripJudge(Jobs jobs, ReadingDoor door, Consumer<RecordedReading> judged, Consumer<Exception> failed) {
        this.jobs = jobs;
        this.door = door;
        this.judged = judged;
        this.failed = failed;
    }

    /** Returns the verdict of the reading asked for last, once it is there. */
    Optional<RecordedReading> verdict() {
        return verdict;
    }

    /** Asks for a verdict, unless it was asked for this very reading. */
    void ask(Reading reading) {
        if (asked.filter(reading::equals).isEmpty()) {
            asked = Optional.of(reading);
            verdict = Optional.empty();
            jobs.run(
                    BenchUiWords.get("judging"),
                    progress -> door.judge(List.of(reading)).get(0),
                    this::take,
                    failure -> fail(reading, failure));
        }
    }

    void forget() {
        asked = Optional.empty();
        verdict = Optional.empty();
    }

    private void take(RecordedReading now) {
        if (asked.filter(now.reading()::equals).isPresent()) {
            verdict = Optional.of(now);
            judged.accept(now);
        }
    }

    private void fail(Reading reading, Exception failure) {
        if (asked.filter(reading::equals).isPresent()) {
            failed.accept(failure);
        }
    }
}
