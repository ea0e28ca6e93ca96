package wickbench.training.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
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
        TrainingWindow.press(window.button("Authorise…"));
        Text until = window.field("Last day");
        LocalDate usual = LocalDate.parse(until.getText());
        until.setText("next year");
        TrainingWindow.press(window.button("Sign…"));
        window.awaitWords("expected a day such as");
        LocalDate chosen = usual.minusMonths(6);
        until.setText(chosen.toString());
        signed(window.button("Sign…"), "Authorise", "round R-1 passed");
        window.desk.await(() -> state() == CompetenceState.AUTHORISED);
        window.awaitWords("round R-1 passed");
        assertThat(competence().until()).contains(chosen);
        window.desk.picture("matrix-light");
        sign("Suspend…", "Suspend", "missed faint lines");
        window.desk.await(() -> state() == CompetenceState.SUSPENDED);
        window.awaitWords("missed faint lines");
        assertThat(window.button("Authorise…").isEnabled()).isFalse();
        TrainingWindow.press(window.button("Restore…"));
        signed(window.button("Sign…"), "Restore", "drilled, next round passed");
        window.desk.await(() -> state() == CompetenceState.AUTHORISED);
        assertThat(competence().until()).contains(usual);
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
        TrainingWindow.press(window.button("Authorise…"));
        TrainingWindow.press(window.button("Sign…"));
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
        assertThat(window.button("Authorise…").isEnabled()).isFalse();
        assertThat(window.button("Suspend…").isEnabled()).isFalse();
        assertThat(window.words()).anyMatch(text -> text.contains("trainer"));
        window.desk.picture("matrix-dark-150");
    }

    @Test
    void keys_and_tabs_go_from_cell_to_cell_and_from_part_to_part() {
        house.peopled().alsoMilk();
        window = new TrainingWindow(house, false, 100, Optional.of(TestHouse.TRAINER));
        window.awaitWords("Ode Penn (op-01)");
        window.part.shown();
        Combo method = window.all(Combo.class).get(0);
        assertThat(method.getText()).isEqualTo(METHOD.value());
        window.keys.key(SWT.ARROW_RIGHT);
        window.keys.key(SWT.ARROW_RIGHT);
        window.desk.await(() -> window.all(Combo.class).get(0).getText().equals("milk-rinse"));
        window.keys.key(SWT.ARROW_LEFT);
        window.desk.await(() -> window.all(Combo.class).get(0).getText().equals(METHOD.value()));
        window.part.tabs().setFocus();
        window.keys.type("3");
        window.awaitWords("Strips come one after the other");
        window.keys.key(SWT.ARROW_LEFT);
        window.awaitWords("No blind round has been held yet");
    }

    @Test
    void without_people_it_says_what_to_do_first() throws IOException {
        window = new TrainingWindow(house, false, 100, Optional.empty());
        window.awaitWords("Nobody is enrolled as an operator");
        TrainingWindow.press(window.button("Go to People"));
        assertThat(window.desk.said()).contains("page people");
        window.desk.picture("matrix-empty");
    }

    private void sign(String button, String verb, String reason) {
        signed(window.button(button), verb, reason);
    }

    private void signed(Button button, String verb, String reason) {
        TrainingWindow.press(button);
        Shell sheet = window.sheet();
        TrainingWindow.fields(sheet).get(0).setText(reason);
        TrainingWindow.fields(sheet).get(1).setText(TestHouse.PHRASE);
        TrainingWindow.press(TrainingWindow.button(verb, sheet));
        window.desk.await(sheet::isDisposed);
        window.desk.await(() -> window.all(Button.class).stream()
                .anyMatch(each -> each.getText().contains("uspend")));
    }

    private CompetenceState state() {
        return competence().state();
    }

    private Competence competence() {
        return house.doors()
                .competences()
                .of(TestHouse.OP, METHOD, house.doors().now());
    }
}
