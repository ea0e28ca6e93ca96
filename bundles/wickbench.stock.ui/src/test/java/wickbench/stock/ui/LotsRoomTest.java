package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.stock.LotState;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The lots in a real window: receive, refuse, quarantine, decide. */
class LotsRoomTest {
    @TempDir
    private Path folder;

    private StockHouse house;
    private TestDesk desk;
    private Seen seen;

    @BeforeEach
    void found() {
        house = new StockHouse(folder.resolve("home"));
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void without_a_kit_the_page_says_what_to_do_first() {
        open(StockHouse.KEEPER);

        assertThat(seen.says("No kit is defined yet")).isTrue();
        assertThat(seen.button("Define a kit \u2026").isEnabled()).isTrue();
    }

    @Test
    void a_box_is_scanned_looked_at_and_only_then_taken_in() {
        house.furnished();
        open(StockHouse.KEEPER);
        new Keyboard(desk).type("]d201" + StockHouse.GTIN + "1727033110HZ-7");
        new Keyboard(desk).enter();
        desk.await(() -> seen.says("(17) last day: 2027-03-31"));

        assertThat(seen.says("(10) lot: HZ-7")).isTrue();
        assertThat(seen.field("Lot").getText()).isEqualTo("HZ-7");
        assertThat(seen.field("Last day on the label").getText()).isEqualTo("2027-03-31");
        assertThat(house.doors().room().lots(house.doors().clock().instant())).isEmpty();

        seen.press("Take it in");
        assertThat(seen.says("Look at the insert in the box: this site's methods were written by revision 3."))
                .isTrue();
        assertThat(house.doors().room().lots(house.doors().clock().instant())).isEmpty();
        seen.field("Revision of the insert").setText("3");
        seen.press("Take it in");
        desk.await(() -> desk.said().contains("Lot HZ-7 was taken in; it awaits its check."));
        assertThat(house.lot("HZ-7").state()).isEqualTo(LotState.AWAITING_CHECK);
        assertThat(house.lot("HZ-7").place()).contains("F1");
        desk.await(() -> seen.says("What was done"));
    }

    @Test
    void an_insert_of_another_revision_is_said_while_it_is_typed_and_stays_with_the_lot() {
        house.furnished();
        open(StockHouse.KEEPER);
        scan("(01)" + StockHouse.GTIN + "(17)270331(10)HZ-7");
        seen.field("Revision of the insert").setText("4");
        assertThat(seen.says("In the box lies 4; this site's methods were written by revision 3."))
                .isTrue();

        seen.press("Take it in");
        desk.await(() -> desk.said().contains("Lot HZ-7 was taken in; it awaits its check."));
        desk.await(() -> seen.says("The insert in the box is revision 4"));
        assertThat(house.lot("HZ-7").otherInsert()).isTrue();
    }

    @Test
    void what_a_scan_leaves_in_doubt_is_asked_and_nothing_is_taken() {
        house.furnished();
        open(StockHouse.KEEPER);
        scan("01" + StockHouse.GTIN + "10HZ17270331");

        assertThat(seen.says("no separator was sent")).isTrue();
        assertThat(seen.field("Lot").getText()).isEmpty();
        seen.press("Take it in");
        assertThat(seen.says("Expected 1 to 500 characters.")).isTrue();
        assertThat(house.doors().room().lots(house.doors().clock().instant())).isEmpty();
    }

    @Test
    void what_is_typed_otherwise_than_scanned_is_not_taken() {
        house.furnished();
        open(StockHouse.KEEPER);
        scan("(01)" + StockHouse.GTIN + "(17)270331(10)HZ-7");
        seen.field("Last day on the label").setText("2027-04-30");
        seen.press("Take it in");

        assertThat(seen.words())
                .contains("\u201c2027-04-30\u201d was typed, \u201c2027-03-31\u201d was scanned. Look at the label"
                        + " again.");
        assertThat(house.doors().room().lots(house.doors().clock().instant())).isEmpty();
    }

    @Test
    void hostile_text_in_the_scan_field_is_refused_in_words() {
        house.furnished();
        open(StockHouse.KEEPER);
        scan("=cmd|' /C calc'!A0 \u202e" + "9".repeat(400));

        assertThat(seen.words()).anyMatch(word -> word.startsWith("character ") || word.startsWith("longer than"));
        assertThat(seen.button("Take it in").isEnabled()).isTrue();
    }

    @Test
    void a_box_that_is_out_of_date_is_refused_in_words_and_the_form_stays() {
        house.furnished();
        open(StockHouse.KEEPER);
        scan("(01)" + StockHouse.GTIN + "(17)260630(10)HZ-OLD");
        seen.field("Revision of the insert").setText("3");
        seen.press("Take it in");
        desk.await(() -> seen.says("was already out of date when it came"));

        assertThat(seen.field("Lot").getText()).isEqualTo("HZ-OLD");
    }

    @Test
    void who_lacks_the_role_sees_why_and_cannot_take_a_box_in() {
        house.furnished();
        house.leaves(StockHouse.KEEPER);
        open(StockHouse.OPERATOR);

        assertThat(seen.button("Take it in").isEnabled()).isFalse();
        assertThat(seen.words()).anyMatch(word -> word.contains("stock keeper"));
    }

    @Test
    void a_held_lot_is_released_by_a_signature_that_shortens_its_date() {
        house.furnished().receive("HZ-1", "2027-03-31", StockHouse.START);
        house.doors().keeping().quarantine(new wickbench.api.lot.LotId("HZ-1"), "the box was wet", house.keeper());
        open(StockHouse.LEAD);
        desk.await(() -> seen.says("the box was wet"));

        seen.press("Decide \u2026");
        seen.field("Use until").setText("2026-12-31");
        seen.field("Reason").setText("pouches are dry");
        seen.press("Release \u2026");
        Shell sheet = sheet();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and release");
        desk.await(() -> desk.said().contains("Lot HZ-1 is released."));

        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.AWAITING_CHECK);
        assertThat(house.lot("HZ-1").effective()).hasToString("2026-12-31");
        desk.await(() -> seen.words().stream().anyMatch(word -> word.contains("released") && word.contains("signed")));
    }

    @Test
    void a_decision_that_lengthens_is_refused_in_the_sheet() {
        house.furnished().receive("HZ-1", "2027-03-31", StockHouse.START);
        house.doors().keeping().quarantine(new wickbench.api.lot.LotId("HZ-1"), "the box was wet", house.keeper());
        open(StockHouse.LEAD);
        desk.await(() -> seen.says("the box was wet"));
        seen.press("Decide \u2026");
        seen.field("Use until").setText("2028-01-01");
        seen.field("Reason").setText("looks good");
        seen.press("Release \u2026");
        Shell sheet = sheet();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and release");
        desk.await(() -> new Seen(sheet).says("A decision never lengthens"));

        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.QUARANTINED_UNCHECKED);
        sheet.close();
    }

    private Shell sheet() {
        return Arrays.stream(desk.shell().getShells()).findFirst().orElseThrow();
    }

    private void scan(String text) {
        seen.field("Scan").setText(text);
        seen.field("Scan").notifyListeners(SWT.DefaultSelection, new Event());
    }

    private void open(PersonId who) {
        desk = new TestDesk(false, 100, 1180, 720, Optional.of(who));
        StockPart page = desk.open(parent -> new StockPart(parent, desk, house.doors()));
        page.shown();
        desk.settle();
        seen = new Seen(desk.shell());
    }
}
