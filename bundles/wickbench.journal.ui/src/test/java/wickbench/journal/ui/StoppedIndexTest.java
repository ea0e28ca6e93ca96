package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.index.IndexVerification;
import wickbench.api.progress.Progress;
import wickbench.testing.ui.TestDesk;

/** Building the index again is stopped by a click, and gone on with by another. */
class StoppedIndexTest {
    /** With the founding one more. */
    private static final int RECORDED = 4_999;

    private final Gate gate = new Gate(1_500);

    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private Hands hands;

    @BeforeEach
    void open() {
        house = new TestHouse(folder, List.of(gate));
        house.recordMany(RECORDED);
        desk = new TestDesk(false, 100, 1100, 1200, Optional.empty());
        JournalPart part = desk.open(parent -> new JournalPart(parent, desk, house.doors()));
        hands = new Hands(desk, part.page());
    }

    @AfterEach
    void close() {
        gate.open();
        desk.close();
        house.close();
    }

    @Test
    void a_stopped_build_says_how_far_it_is_and_goes_on() {
        stopHalfWay();
        assertThat(hands.words())
                .contains("2,000 of 5,000 entries")
                .anyMatch(word -> word.startsWith("The tables hold the first of the entries."));
        hands.click("Take in the rest");
        desk.await(() -> desk.said().contains("The index is whole: 2 views."));
        hands.awaitWord("5,000 entries, up to date");
        holds();
    }

    @Test
    void a_stopped_build_may_be_begun_anew() {
        stopHalfWay();
        hands.click("Rebuild the index");
        desk.await(() -> desk.said().contains("The index is whole: 2 views."));
        holds();
    }

    private void stopHalfWay() {
        gate.shut();
        hands.click("Rebuild the index");
        desk.await(gate::reached);
        hands.awaitWord("20 % taken in. Pages that read wait until it is done or stopped.");
        hands.click("Stop building");
        assertThat(hands.words()).contains("Stopping");
        gate.open();
        hands.awaitWord("Stopped");
    }

    private void holds() {
        IndexVerification verified = house.doors().index().verify(Progress.NONE);
        assertThat(verified.holds()).isTrue();
    }
}
