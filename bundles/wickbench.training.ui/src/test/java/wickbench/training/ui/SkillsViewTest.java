package wickbench.training.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;

/** The skills matrix and one person's file, in a real window. */
class SkillsViewTest {
    private static final MethodId METHOD = new MethodId("hazelnut-swab-dry");

    @TempDir
    private Path folder;

    private TestHouse house;
    private TrainingWindow window;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        window.close();
        house.close();
    }

    @Test
    void a_trainer_authorises_suspends_and_restores_under_their_name() throws IOException {
        house.peopled().keyed();
        window = new TrainingWindow(house, false, 100, Optional.of(TestHouse.TRAINER));
        window.awaitWords("Ode Penn (op-01)");
        sign("Authorise …", "Authorise", "round R-1 passed");
        window.desk.await(() -> state() == CompetenceState.AUTHORISED);
        window.awaitWords("round R-1 passed");
        window.desk.picture("matrix-light");
        sign("Suspend …", "Suspend", "missed faint lines");
        window.desk.await(() -> state() == CompetenceState.SUSPENDED);
        window.awaitWords("missed faint lines");
        assertThat(window.button("Authorise …").isEnabled()).isFalse();
        sign("Restore …", "Restore", "drilled, next round passed");
        window.desk.await(() -> state() == CompetenceState.AUTHORISED);
        assertThat(house.doors()
                        .competences()
                        .person(TestHouse.OP, house.doors().now())
                        .happenings())
                .hasSize(3)
                .allMatch(each -> each.signed());
    }

    @Test
    void a_wrong_passphrase_authorises_nobody_and_the_sheet_says_why() {
        house.peopled().keyed();
        window = new TrainingWindow(house, false, 100, Optional.of(TestHouse.TRAINER));
        window.awaitWords("Ode Penn (op-01)");
        TrainingWindow.press(window.button("Authorise …"));
        Shell sheet = window.sheet();
        TrainingWindow.fields(sheet).get(0).setText("round passed");
        TrainingWindow.fields(sheet).get(1).setText("not the phrase at all");
        TrainingWindow.press(TrainingWindow.button("Authorise", sheet));
        window.desk.await(() -> TrainingWindow.all(Label.class, sheet).stream()
                .anyMatch(label -> label.getText().contains("That is not the passphrase of 'trainer'")));
        assertThat(state()).isEqualTo(CompetenceState.NEVER);
        sheet.close();
    }

    @Test
    void who_is_no_trainer_sees_why_and_cannot_press() throws IOException {
        house.peopled().keyed();
        window = new TrainingWindow(house, true, 150, Optional.of(TestHouse.OP));
        window.awaitWords("Ode Penn (op-01)");
        assertThat(window.button("Authorise …").isEnabled()).isFalse();
        assertThat(window.button("Suspend …").isEnabled()).isFalse();
        assertThat(window.words()).anyMatch(text -> text.contains("trainer"));
        window.desk.picture("matrix-dark-150");
    }

    @Test
    void without_people_it_says_what_to_do_first() throws IOException {
        window = new TrainingWindow(house, false, 100, Optional.empty());
        window.awaitWords("Nobody is enrolled as an operator");
        TrainingWindow.press(window.button("Go to People"));
        assertThat(window.desk.said()).contains("page people");
        window.desk.picture("matrix-empty");
    }

    @Test
    void a_design_is_reckoned_before_a_round_is_fixed() throws IOException {
        house.peopled();
        window = new TrainingWindow(house, false, 100, Optional.of(TestHouse.TRAINER));
        window.part.show("rounds");
        window.awaitWords("Of 36 strips in all");
        Text near = TrainingWindow.fields(window.part.body()).get(1);
        near.setText("3");
        window.awaitWords("Of 19 strips in all");
        near.setText("many");
        window.awaitWords("expected a whole number from 0 to 200");
        assertThat(window.words()).noneMatch(text -> text.startsWith("Of 19"));
        near.setText("20");
        window.awaitWords("Of 36 strips in all");
        window.desk.settle();
        window.desk.picture("rounds-light");
    }

    private void sign(String button, String verb, String reason) {
        TrainingWindow.press(window.button(button));
        Shell sheet = window.sheet();
        TrainingWindow.fields(sheet).get(0).setText(reason);
        TrainingWindow.fields(sheet).get(1).setText(TestHouse.PHRASE);
        TrainingWindow.press(TrainingWindow.button(verb, sheet));
        window.desk.await(sheet::isDisposed);
        window.desk.await(() -> window.all(Button.class).stream()
                .anyMatch(each -> each.getText().contains("uspend")));
    }

    private CompetenceState state() {
        Competence now = house.doors()
                .competences()
                .of(TestHouse.OP, METHOD, house.doors().now());
        return now.state();
    }
}
