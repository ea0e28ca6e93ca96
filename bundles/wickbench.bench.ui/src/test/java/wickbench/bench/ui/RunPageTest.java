package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;
import wickbench.testing.ui.TestDesk;

/** A whole run at the bench, by keys alone, on the real window. */
class RunPageTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private BenchOperator operator;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).withMethods();
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        operator = new BenchOperator(desk, page.flow(), house.time);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void twelve_mixed_strips_with_controls_are_run_from_the_keyboard_and_the_entries_verify() throws IOException {
        Map<Integer, String> answers = enterTwelve();
        desk.picture("run-new");
        operator.plan();
        desk.picture("run-plan");
        operator.begin();
        desk.picture("run-guide");
        operator.work(answers);
        operator.finish();

        List<RecordedReading> kept = recorded();
        assertThat(kept).hasSize(12);
        assertThat(count(kept, Outcome.NEGATIVE)).isEqualTo(8);
        assertThat(count(kept, Outcome.POSITIVE)).isEqualTo(3);
        assertThat(count(kept, Outcome.POSITIVE_ABOVE_RANGE)).isEqualTo(1);
        assertThat(kept)
                .allSatisfy(one -> assertThat(one.verdict().findings())
                        .noneMatch(finding -> finding.rule().startsWith("time.read")));
        Verification verified = house.journal().verify(Progress.NONE);
        assertThat(verified.toString()).doesNotContain("Broken");
        assertThat(verified.holds()).isTrue();
        assertThat(lastKind()).isEqualTo("run.recorded");
    }

    /** Two controls, then ten samples by three methods of other times. */
    private Map<Integer, String> enterTwelve() {
        Map<Integer, String> answers = new HashMap<>();
        operator.enter("hazelnut-rinse", "hz-1", "blank", "bench", 1);
        answers.put(1, "ssn");
        operator.enter("hazelnut-rinse", "hz-1", "low", "bench", 2);
        answers.put(2, "sss");
        for (int strip = 3; strip <= 6; strip++) {
            operator.enter("hazelnut-rinse", "hz-1", "r-" + strip, "rinse line 1", 0);
            answers.put(strip, strip == 4 ? "snn" : "ssn");
        }
        for (int strip = 7; strip <= 9; strip++) {
            operator.enter("milk-rinse", "mk-1", "m-" + strip, "filler line 2", 0);
            answers.put(strip, strip == 9 ? "ss" : "sn");
        }
        for (int strip = 10; strip <= 12; strip++) {
            operator.enter("gluten-food-liquid", "gl-1", "g-" + strip, "batch tank", 0);
            answers.put(strip, strip == 12 ? "sn" : "ss");
        }
        return answers;
    }

    private static long count(List<RecordedReading> all, Outcome outcome) {
        return all.stream().filter(one -> one.verdict().outcome() == outcome).count();
    }

    private List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        house.journal().read(house.station(), 0, all::add);
        return all;
    }

    private String lastKind() {
        List<Entry> all = entries();
        return all.get(all.size() - 1).kind();
    }

    private List<RecordedReading> recorded() {
        return entries().stream()
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .map(entry -> RecordedReadingJson.read("entry", entry.body()).orRefuse())
                .toList();
    }
}
