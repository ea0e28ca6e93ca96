package wickbench.training.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.training.Round;
import wickbench.training.ui.CallRun.Phase;

/** A whole blind round in a real window: designed, opened, called by keys and from a sheet, closed, scored, seen. */
class RoundsViewTest {
    private static final PersonId OP_2 = new PersonId("op-02");
    private static final String ROUND = "spring";

    @TempDir
    private Path folder;

    private TestHouse house;
    private TrainingWindow window;

    @BeforeEach
    void found() {
        house = new TestHouse(folder.resolve("home")).peopled().joinedBy(OP_2, "Una Fell");
        window = new TrainingWindow(house, false, 100, Optional.of(TestHouse.TRAINER));
        window.part.show("rounds");
        window.awaitWords("No blind round has been held yet");
    }

    @AfterEach
    void close() {
        window.close();
        house.close();
    }

    @Test
    void a_design_is_reckoned_before_a_round_is_fixed() throws IOException {
        press("New round…");
        window.awaitWords("Of 36 strips in all");
        Text near = window.field("Near the limit");
        near.setText("3");
        window.awaitWords("Of 19 strips in all");
        near.setText("many");
        window.awaitWords("expected a whole number from 0 to 200");
        assertThat(window.words()).noneMatch(text -> text.startsWith("Of 19"));
        near.setText("20");
        window.awaitWords("0 clear or hook strips missed, 0 false alarms");
        window.field("False alarms").setText("1");
        window.awaitWords("0 clear or hook strips missed, 1 false alarms");
        window.desk.settle();
        window.desk.picture("round-design-light");
    }

    @Test
    void a_whole_round_is_held_in_the_window() throws IOException {
        designed();
        press("Open the round");
        window.awaitWords("Its key is sealed.");
        assertThat(round().commitment().hex()).hasSize(64);
        window.desk.picture("round-prepared-light");
        press("Done");
        window.awaitWords("0 of 3");
        assertThat(window.button("Call strips").isEnabled()).isFalse();
        assertThat(window.words()).anyMatch(text -> text.equals("You are no reader of this round."));

        callByKeys();
        closeTooEarly();
        callBySheet();

        press("Open the key…");
        window.awaitWords("it was not changed since before the first call");
        assertThat(round().keyHolds()).contains(true);
        score();

        window.desk.signIn(TestHouse.OP);
        window.desk.await(() -> enabled("Seen by me…"));
        press("Seen by me…");
        signed("Seen");
        window.desk.await(() -> round().seen().contains(TestHouse.OP));
        window.desk.await(() -> window.words().stream()
                .anyMatch(text -> text.equals("You have signed that you have seen your score.")));
    }

    private void designed() {
        press("New round…");
        window.awaitWords("Of 36 strips in all");
        window.field("Blank").setText("2");
        window.field("Near the limit").setText("0");
        window.field("Clear positive").setText("1");
        window.field("Hook").setText("0");
        window.field("Invalid").setText("0");
        window.awaitWords("Of 3 strips in all");
        window.field("Name of the round").setText(ROUND);
        window.field("Seconds to develop").setText("1");
        window.field("Seconds of window after that").setText("3600");
        // said nowhere how the key is made, nobody ticked: each is refused in one line, and nothing is recorded
        press("Open the round");
        window.awaitWords("expected a reason, found nothing");
        window.field("Key made by, and how").setText("made by the laboratory from a reference food");
        press("Open the round");
        window.awaitWords("expected at least one reader");
        assertThat(house.doors().blind().rounds().all()).isEmpty();
        tick("Ode Penn (op-01)");
        tick("Una Fell (op-02)");
    }

    /** The first operator starts every strip and calls it by keys; what it hides stands nowhere on the screen. */
    private void callByKeys() throws IOException {
        window.desk.signIn(TestHouse.OP);
        window.desk.await(() -> enabled("Call strips"));
        press("Call strips");
        window.desk.await(() -> stage().isPresent());
        for (String code : round().codes()) {
            assertThat(run().phase(code, house.doors().now())).isEqualTo(Phase.WAITING);
            window.keys.key(SWT.F9);
        }
        window.desk.await(() -> round().codes().stream()
                .allMatch(code -> run().phase(code, house.doors().now()) == Phase.OPEN));
        window.desk.picture("round-call-light");
        assertThat(TrainingWindow.all(Label.class, stage().orElseThrow().control()))
                .extracting(Label::getText)
                .noneMatch(text -> text.contains("Blank") || text.contains("Clear positive"));
        // two lines of three are no call
        window.keys.type("ss");
        window.keys.enter();
        assertThat(round().callsOf(TestHouse.OP)).isEmpty();
        window.keys.type("n");
        window.keys.enter();
        for (int called = 1; called <= round().codes().size(); called++) {
            int so = called;
            window.desk.await(() -> round().callsOf(TestHouse.OP).size() == so && run().called() == so);
            if (called < round().codes().size()) {
                window.keys.type("ssn");
                window.keys.enter();
            }
        }
        window.awaitWords("Every strip is called.");
        assertThat(round().callsOf(TestHouse.OP))
                .allMatch(call -> round().plan().inside(call.elapsed()));
        window.keys.key(SWT.ESC);
        window.awaitWords("3 of 3");
    }

    private void closeTooEarly() {
        window.desk.signIn(TestHouse.TRAINER);
        window.desk.await(() -> enabled("Open the key…"));
        press("Open the key…");
        window.awaitWords("Somebody has not called every strip");
        press("Open the key");
        window.awaitWords("stays sealed until everybody has called every strip; missing: op-02");
        assertThat(round().state()).isEqualTo(Round.State.OPEN);
        press("Leave it");
    }

    private void callBySheet() throws IOException {
        press("Calls from a sheet…");
        List<String> turned = new ArrayList<>(round().codes());
        Collections.reverse(turned);
        window.field("File").setText(sheet("turned.csv", turned));
        press("Keep the calls");
        window.awaitWords("another order than the round is read in");
        assertThat(round().callsOf(OP_2)).isEmpty();
        window.field("File").setText(sheet("called.csv", round().codes()));
        press("Keep the calls");
        window.desk.await(() -> round().callsOf(OP_2).size() == 3);
        window.desk.await(() -> round().missing().isEmpty()
                && window.words().stream().filter("3 of 3"::equals).count() == 2);
    }

    private void score() throws IOException {
        Button before = window.button("Score…");
        house.keyed().keyed(TestHouse.OP);
        window.part.newsCame();
        window.desk.await(() -> before.isDisposed() && enabled("Score…"));
        press("Score…");
        signed("Score");
        window.desk.await(() -> round().state() == Round.State.SCORED);
        window.awaitWords("Scores");
        assertThat(round().scores()).hasSize(2).noneMatch(score -> score.passed());
        window.desk.settle();
        window.desk.picture("round-scored-light");
    }

    private void signed(String verb) {
        Shell sheet = window.sheet();
        TrainingWindow.fields(sheet).get(0).setText(TestHouse.PHRASE);
        TrainingWindow.press(TrainingWindow.button(verb, sheet));
    }

    /** Somebody who sees no test line at all. */
    private String sheet(String name, List<String> codes) throws IOException {
        Instant read = house.doors().now();
        StringBuilder text = new StringBuilder("code;control;hook;test;outcome;started;read\n");
        codes.forEach(code -> text.append(String.join(
                        ";",
                        code,
                        "seen",
                        "seen",
                        "not-seen",
                        "",
                        read.minusMillis(1500).toString(),
                        read.toString()))
                .append('\n'));
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private void tick(String person) {
        // the first of the two rows lists readers
        window.button(person).setSelection(true);
    }

    private void press(String button) {
        TrainingWindow.press(window.button(button));
    }

    private boolean enabled(String words) {
        return window.all(Button.class).stream()
                .anyMatch(button -> button.getText().replace("&", "").equals(words) && button.isEnabled());
    }

    private Round round() {
        return house.doors().blind().rounds().find(ROUND).orElseThrow();
    }

    private Optional<CallStage> stage() {
        return ((RoundsView) window.part.view()).call();
    }

    private CallRun run() {
        return stage().orElseThrow().run();
    }
}
