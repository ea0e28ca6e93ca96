package wickbench.people.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.testing.ui.TestDesk;

/** The page People on a real home and a real window. */
class PeoplePageTest {
    private static final PersonId ADA = new PersonId("ada");
    private static final PersonId BO = new PersonId("bo");
    private static final String ADAS = "seven grey herons wade";

    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void the_first_start_names_the_station_and_makes_an_administrator_with_a_passphrase() {
        desk = new TestDesk(false, 100, 1000, 700, Optional.empty());
        PeoplePart page = open();
        fill(page, "rinse-bench", "Europe/Vienna", "ada", "Ada Brook", ADAS, ADAS);

        press(page, "Begin");
        desk.await(() -> !desk.said().isEmpty());

        assertThat(house.doors().journal().founding().orElseThrow().station()).isEqualTo(new StationId("rinse-bench"));
        assertThat(house.doors().people().find(ADA).orElseThrow().roles()).containsExactly(Role.ADMINISTRATOR);
        assertThat(house.doors().signIn().secretOf(ADA)).isEqualTo(Secret.PASSPHRASE);
    }

    @Test
    void two_passphrases_that_differ_are_told_and_nothing_is_made() {
        desk = new TestDesk(false, 100, 1000, 700, Optional.empty());
        PeoplePart page = open();
        fill(page, "rinse-bench", "Europe/Vienna", "ada", "Ada Brook", ADAS, ADAS + "s");

        press(page, "Begin");

        assertThat(words(page)).contains("The two differ.");
        assertThat(house.doors().people().all()).isEmpty();
    }

    @Test
    void a_weak_passphrase_is_refused_in_words_and_a_second_press_does() {
        desk = new TestDesk(false, 100, 1000, 700, Optional.empty());
        PeoplePart page = open();
        fill(page, "rinse-bench", "Europe/Vienna", "ada", "Ada Brook", "too short", "too short");

        press(page, "Begin");
        desk.await(() -> words(page).stream().anyMatch(word -> word.contains("expected 12 to 256 characters")));

        assertThat(house.doors().signIn().asked()).isFalse();
    }

    @Test
    void who_may_not_sees_why_and_cannot_press() {
        house.doors().people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        house.doors().people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA);
        house.doors().credentials().set(ADA, Optional.empty(), Passphrase.of(ADAS.toCharArray()));
        desk = new TestDesk(true, 100, 1100, 760, Optional.of(BO));

        PeoplePart page = open();

        assertThat(button(page, "Give these roles").isEnabled()).isFalse();
        assertThat(words(page)).contains("'bo' may not give roles: that asks for the role administrator.");
    }

    private PeoplePart open() {
        return desk.open(parent -> new PeoplePart(parent, desk, house.doors()));
    }

    private static void fill(PeoplePart page, String... typed) {
        List<Text> fields = all(page.body(), Text.class);
        for (int i = 0; i < typed.length; i++) {
            fields.get(i).setText(typed[i]);
        }
    }

    private static void press(PeoplePart page, String verb) {
        button(page, verb).notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
    }

    private static Button button(PeoplePart page, String verb) {
        return all(page.body(), Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(verb))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words(PeoplePart page) {
        return all(page.body(), Label.class).stream().map(Label::getText).toList();
    }

    private static <C extends Control> List<C> all(Composite box, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : box.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, type));
            }
        }
        return found;
    }
}
