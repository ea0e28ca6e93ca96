package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.stock.LotState;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Side;

/** The lots in a real window: receive, refuse, quarantine, decide. */
class LotsRoomTest {
    private static final LotId LOT = new LotId("HZ-1");

    @TempDir
    private Path folder;

    private StockHouse house;
    private TestDesk desk;
    private Seen seen;
    private StockPart page;

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
        assertThat(seen.button("Define a kit\u2026").isEnabled()).isTrue();
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
        house.doors().keeping().quarantine(LOT, "the box was wet", house.keeper());
        open(StockHouse.LEAD);
        desk.await(() -> seen.says("the box was wet"));

        seen.press("Decide\u2026");
        seen.field("Use until").setText("2026-12-31");
        seen.field("Reason").setText("pouches are dry");
        seen.press("Release\u2026");
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
        house.doors().keeping().quarantine(LOT, "the box was wet", house.keeper());
        open(StockHouse.LEAD);
        desk.await(() -> seen.says("the box was wet"));
        seen.press("Decide\u2026");
        seen.field("Use until").setText("2028-01-01");
        seen.field("Reason").setText("looks good");
        seen.press("Release\u2026");
        Shell sheet = sheet();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and release");
        desk.await(() -> new Seen(sheet).says("A decision never lengthens"));

        assertThat(house.lot("HZ-1").state()).isEqualTo(LotState.QUARANTINED_UNCHECKED);
        sheet.close();
    }

    @Test
    void a_lot_is_rejected_from_a_day_on_and_what_is_no_day_is_asked_again() {
        house.furnished().receive("HZ-1", "2027-03-31", StockHouse.START.minus(Duration.ofDays(9)));
        open(StockHouse.LEAD);
        desk.await(() -> seen.says("What was done"));
        begin(LotAct.REJECT);
        seen.field("Not trusted since").setText("last week");
        seen.field("Reason").setText("recalled");
        seen.press("Reject\u2026");
        assertThat(seen.says("Expected a time, such as 2026-03-01 08:00.")).isTrue();

        seen.field("Not trusted since").setText("2026-07-15");
        seen.press("Reject\u2026");
        Shell sheet = sheet();
        new Seen(sheet).field("Passphrase").setText(StockHouse.LEADS);
        new Seen(sheet).press("Sign and reject");
        desk.await(() -> desk.said().contains("Lot HZ-1 is rejected."));

        assertThat(house.doors().room().history(LOT).get(1).facts()).containsEntry("since", "2026-07-15T00:00:00.000Z");
    }

    /** Does what the menu of the lot does. */
    private void begin(LotAct act) {
        LotsRoom room = (LotsRoom) page.front();
        LotDesk lots = new LotDesk(house.doors());
        LotDesk.Known known = lots.known(Optional.of(StockHouse.LEAD));
        Side side = room.side().orElseThrow();
        side.fill(content -> new LotForms(
                        desk, house.doors(), lots.find(LOT, known).orElseThrow(), side::measure, () -> {}, desk::say)
                .open(content, act));
    }

    @Test
    void the_room_is_printed_and_the_paper_is_read_back() throws IOException {
        house.furnished().receive("HZ-1", "2027-03-31", StockHouse.START);
        open(StockHouse.KEEPER);
        assertThat(seen.button("Print\u2026").isEnabled()).isTrue();
        Path file = folder.resolve("stockroom.pdf");
        new ReportButton(desk, house.doors()).print(file);
        desk.await(() -> desk.said().contains("Written: " + file));
        try (PDDocument paper = Loader.loadPDF(file.toFile())) {
            assertThat(new PDFTextStripper().getText(paper))
                    .contains("Stock room on 2026-07-20", "HZ-1", "awaiting its check", "Laboratory fridge");
        }
        new ReportButton(desk, house.doors()).print(folder.resolve("stockroom.doc"));
        desk.await(() -> desk.said().stream().anyMatch(said -> said.contains("ends in .pdf")));
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
        page = desk.open(parent -> new StockPart(parent, desk, house.doors()));
        page.shown();
        desk.settle();
        seen = new Seen(desk.shell());
    }
}
