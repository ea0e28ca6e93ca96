package wickbench.training.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.training.Drilled;

/** The faint-line drill in a real window, worked by keys. */
class DrillViewTest {
    /** Sees every line from here on, and none fainter. */
    private static final double SEES = 0.015;

    @TempDir
    private Path folder;

    private TestHouse house;
    private TrainingWindow window;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).peopled();
    }

    @AfterEach
    void close() {
        window.close();
        house.close();
    }

    @Test
    void a_whole_drill_runs_by_keys_and_is_kept() throws IOException {
        open(false, 100, Optional.of(TestHouse.OP));
        window.desk.picture("drill-begin-light");
        window.keys.type(" ");
        countSpots();
        int shown = readStrips("drill-strip-light");
        assertThat(shown).isBetween(40, 96);

        window.awaitWords("You see half of the lines of");
        assertThat(window.words()).anyMatch(text -> text.startsWith("Practice only."));
        window.desk.settle();
        window.desk.picture("drill-result-light");
        window.keys.type(" ");
        window.awaitWords("Kept as");

        List<Drilled> kept = house.doors().drills().of(TestHouse.OP);
        assertThat(kept).hasSize(1);
        assertThat(kept.get(0).threshold()).isBetween(0.009, 0.025);
        assertThat(kept.get(0).alarms()).isZero();
        assertThat(kept.get(0).missed()).isZero();
        assertThat(kept.get(0).strips()).isEqualTo(shown);
        assertThat(window.button("Keep as an entry").isEnabled()).isFalse();
    }

    @Test
    void who_counts_wrong_gets_other_spots_and_no_drill() throws IOException {
        open(true, 150, Optional.empty());
        window.keys.type(" ");
        window.desk.await(() -> wedges().size() == 3);
        window.keys.type("9");
        window.keys.enter();
        window.awaitWords("Turn the brightness of the screen down");
        assertThat(window.all(Strip.class)).isEmpty();
        assertThat(state().drill().answers()).isEmpty();
        window.desk.picture("drill-wedge-dark-150");
        countSpots();
        awaitStrip();
        window.desk.picture("drill-strip-dark-150");
    }

    @Test
    void keys_between_two_strips_and_other_keys_are_no_answers() {
        open(false, 100, Optional.empty());
        window.keys.type(" ");
        countSpots();
        awaitStrip();
        window.keys.type("x");
        assertThat(state().drill().answers()).isEmpty();
        window.keys.type("n");
        window.keys.type("n");
        awaitStrip();
        assertThat(state().drill().answers()).hasSize(1);
        TrainingWindow.press(window.button("Stop the drill"));
        window.awaitWords("You may practise without signing in");
        assertThat(house.doors().drills().of(TestHouse.OP)).isEmpty();
    }

    @Test
    void a_drill_goes_on_in_another_look() {
        open(false, 100, Optional.empty());
        window.keys.type(" ");
        countSpots();
        awaitStrip();
        window.keys.type("s");
        awaitStrip();
        DrillState before = state();
        Object draft = window.part.draft().orElseThrow();
        TrainingPart next = window.desk.open(parent -> new TrainingPart(parent, window.desk, house.doors()));
        next.restore(draft);
        DrillState after = ((DrillView) next.view()).state().orElseThrow();
        assertThat(after.drill().answers()).isEqualTo(before.drill().answers());
        assertThat(after.line()).isEqualTo(before.line());
    }

    private void open(boolean dark, int percent, Optional<wickbench.api.person.PersonId> actor) {
        window = new TrainingWindow(house, dark, percent, actor);
        window.part.show("drill");
        window.awaitWords("Strips come one after the other");
        window.part.shown();
        window.desk.await(() -> Display.getCurrent().getFocusControl() != null);
    }

    private List<Wedge> wedges() {
        return window.all(Wedge.class);
    }

    private void countSpots() {
        window.desk.await(() -> wedges().size() == 3);
        wedges().forEach(wedge -> {
            window.keys.type(String.valueOf(wedge.row().spots()));
            window.keys.tab();
        });
        // the focus is on the button that checks
        window.keys.type(" ");
    }

    private int readStrips(String picture) throws IOException {
        int shown = 0;
        while (state().stage() != DrillState.Stage.RESULT) {
            awaitStrip();
            shown++;
            if (shown == 3) {
                window.desk.picture(picture);
            }
            boolean seen = state().drill().next().orElseThrow().contrast() > SEES;
            int before = state().drill().answers().size();
            window.keys.type(seen ? "s" : "n");
            window.desk.await(() -> state().drill().answers().size() > before);
        }
        return shown;
    }

    private void awaitStrip() {
        window.desk.await(() -> window.all(Strip.class).stream().anyMatch(Strip::shows));
    }

    private DrillState state() {
        return ((DrillView) window.part.view()).state().orElseThrow();
    }
}
