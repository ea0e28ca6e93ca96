package wickbench.people.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.shell.ForgottenPassphrase;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** Sealing a code and coming back by it, typed as a person types. */
class RecoverFormTest {
    private static final PersonId ADA = new PersonId("ada");
    private static final PersonId BO = new PersonId("bo");
    private static final String ADAS = "seven grey herons wade";
    private static final String ONCE = "mist over the reeds";
    private static final String FRESH = "once upon a river";

    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private Keyboard keys;
    private PeoplePart page;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
        house.doors().people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        house.doors().credentials().set(ADA, Optional.empty(), typed(ADAS));
        house.doors().signIn().open(ADA, typed(ADAS));
        house.doors().people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void an_administrator_seals_a_code_that_is_shown_once() {
        open(true, Optional.of(ADA));
        press("Recovery code\u2026");
        desk.await(() -> there("Sign and make a code"));
        keys.type(ADAS);
        press("Sign and make a code");
        desk.await(() -> there("It is written down"));

        String code = seen().labels()
                .filter(words -> words.matches("(\\w{5}-){4}\\w{5}"))
                .findFirst()
                .orElseThrow();
        assertThat(house.doors().recovery().sealed()).isTrue();
        press("Copy, to print it");
        assertThat(desk.said()).last().asString().startsWith("Copied.");
        press("It is written down");
        desk.await(() -> !seen().labels().toList().contains(code));
    }

    @Test
    void who_forgot_their_passphrase_comes_back_by_code_and_witness() throws Exception {
        String code = sealed();
        open(false, Optional.empty());
        forgotten();
        desk.picture("recover-light");

        keys.type(code.toLowerCase(java.util.Locale.ROOT));
        keys.tab();
        seen().first(Combo.class).select(0);
        keys.tab();
        keys.tab();
        fields("forgot it", ONCE, ONCE);
        press("Use the code");
        desk.await(() -> there("Set passphrase"));
        assertThat(house.doors().signIn().secretOf(ADA)).isEqualTo(Secret.ONCE);
        desk.picture("renew-light");

        fields("short", "short");
        press("Set passphrase");
        desk.await(() -> says("expected 12 to 256 characters"));
        seen().first(Text.class).setFocus();
        fields(FRESH, FRESH);
        press("Set passphrase");
        desk.await(() -> there("Forgotten passphrase of ada\u2026"));

        house.doors().signIn().open(ADA, typed(FRESH));
        assertThat(house.doors().recovery().sealed()).isFalse();
        assertThat(says("No recovery code lies sealed.")).isTrue();
    }

    @Test
    void a_wrong_code_is_one_line_and_leaves_the_right_one_good() throws Exception {
        sealed();
        open(true, Optional.empty());
        forgotten();
        keys.type("00000-00000-00000-00000-00000");
        press("Use the code");
        assertThat(says("Choose who stands by; they are named in the journal.")).isTrue();

        seen().first(Combo.class).select(0);
        seen().all(Text.class).get(2).setFocus();
        fields("forgot it", ONCE, ONCE);
        press("Use the code");
        desk.await(() -> says("That is not the sealed recovery code."));
        desk.picture("recover-dark");
        assertThat(house.doors().recovery().sealed()).isTrue();
        assertThat(house.doors().signIn().secretOf(ADA)).isEqualTo(Secret.PASSPHRASE);
    }

    @Test
    void a_witness_with_a_passphrase_is_asked_for_it() {
        house.doors().credentials().reset(BO, typed(ONCE), new Signing(ADA, typed(ADAS)), Optional.empty());
        house.doors().credentials().set(BO, Optional.of(typed(ONCE)), typed("hills behind hills"));
        String code = sealed();
        open(false, Optional.empty());
        forgotten();
        keys.type(code);
        seen().first(Combo.class).select(0);
        press("Use the code");

        assertThat(says("They have a passphrase, so they sign with it.")).isTrue();
        assertThat(house.doors().recovery().sealed()).isTrue();
    }

    @Test
    void without_a_sealed_code_the_button_rests_and_says_why() {
        open(true, Optional.empty());
        press("Forgotten passphrase of ada\u2026");
        desk.await(() -> there("Use the code"));
        assertThat(seen().button("Use the code").isEnabled()).isFalse();
        assertThat(says("No recovery code lies sealed here")).isTrue();
    }

    private String sealed() {
        return house.doors().recovery().seal(new Signing(ADA, typed(ADAS)));
    }

    private void open(boolean dark, Optional<PersonId> actor) {
        desk = new TestDesk(dark, 100, 1240, 860, actor);
        keys = new Keyboard(desk);
        page = desk.open(parent -> new PeoplePart(parent, desk, house.doors()));
        desk.settle();
    }

    private void forgotten() {
        page.show(new ForgottenPassphrase(ADA).argument());
        desk.await(() -> there("Use the code"));
        desk.settle();
    }

    /** Types one field after the other, from the one that has the focus. */
    private void fields(String... texts) {
        for (String text : texts) {
            keys.type(text);
            keys.tab();
        }
    }

    private void press(String verb) {
        Button button = seen().button(verb);
        button.setFocus();
        keys.type(" ");
    }

    private boolean there(String verb) {
        return seen().all(Button.class).stream()
                .anyMatch(button -> button.getText().replace("&", "").equals(verb));
    }

    private boolean says(String words) {
        return seen().all(Label.class).stream()
                .anyMatch(label -> label.isVisible() && label.getText().contains(words));
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }

    private static Passphrase typed(String text) {
        return Passphrase.of(text.toCharArray());
    }
}
