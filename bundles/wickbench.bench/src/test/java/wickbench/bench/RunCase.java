package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.FakeTime;
import wickbench.bench.run.OpenRuns;
import wickbench.bench.run.Phase;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.TestStrips;
import wickbench.reading.RecordedReadingJson;

/** A bench with one run, at a time that a test lets pass. */
abstract class RunCase {
    static final PersonId ANA = new PersonId("ana");
    static final PersonId BEN = new PersonId("ben");
    static final Map<LineRole, Seen> NEGATIVE = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.NOT_SEEN);
    static final Map<LineRole, Seen> POSITIVE = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.SEEN);
    static final Map<LineRole, Seen> FAINT = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.FAINT);

    @TempDir
    Path folder;

    final FakeTime time = new FakeTime("2026-03-02T06:00:00Z");
    BenchHome home;
    OpenRuns runs;
    Run run;

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
        runs = runs();
    }

    @AfterEach
    void close() {
        runs.close();
        home.close();
    }

    private OpenRuns runs() {
        return new OpenRuns(
                folder.resolve("runs"),
                time,
                Runnable::run,
                time,
                home.door,
                (draft, run) -> home.journal.append(List.of(draft)),
                UUID::randomUUID);
    }

    void begin(RunStrip... strips) {
        run = runs.begin(List.of(strips), ANA).join();
    }

    static RunStrip strip(int number) {
        return TestStrips.strip(number, Optional.empty());
    }

    void happened(RunEvent event) {
        run.happened(event, time.now()).join();
    }

    void read(int strip, Map<LineRole, Seen> lines) {
        happened(new RunEvent.Looked(strip));
        happened(new RunEvent.Kept(strip, ANA, lines));
    }

    Phase phase(int strip) {
        return run.state().strip(strip).orElseThrow().phase(time.now());
    }

    /** The program ends without a word, and another begins. */
    void crash() {
        time.forgetWaiting();
        runs = runs();
        run = runs.open().get(0);
    }

    List<RecordedReading> recorded() {
        List<RecordedReading> found = new ArrayList<>();
        entries().stream()
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .forEach(entry -> found.add(
                        RecordedReadingJson.read("entry", entry.body()).orRefuse()));
        return found;
    }

    List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        home.journal.read(home.journal.stations().get(0), 0, all::add);
        return all;
    }

    static void refused(Runnable act) {
        assertThatThrownBy(act::run).hasRootCauseInstanceOf(Refusal.class);
    }

    String lastBody() {
        List<Entry> all = entries();
        assertThat(all.get(all.size() - 1).kind()).isEqualTo("run.recorded");
        return all.get(all.size() - 1).body().canonical();
    }
}
