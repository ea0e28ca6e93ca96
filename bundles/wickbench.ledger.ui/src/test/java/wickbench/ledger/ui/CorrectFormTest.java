package wickbench.ledger.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.testing.Meets;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.StripDrawing;

/** A result is corrected on the page, under a name, and what was said before stays beside it. */
class CorrectFormTest {
    private static final int LOT = 9;

    @TempDir
    private Path folder;

    private ReleaseHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new ReleaseHouse(folder);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    @Meets({"21 CFR 11.10(e)", "ISO/IEC 17025 7.5.2"})
    void a_reviewer_says_what_was_otherwise_and_signs() throws IOException {
        Kept kept = house.tested("S-1", "07", "control hook");
        LedgerPart page = page(kept, ReleaseHouse.RUI);
        seen().press("Correct\u2026");
        desk.await(() -> seen().words().contains("Correct S-1"));
        desk.settle();
        desk.picture("ledger-correct");

        seen().press("Sign\u2026");
        assertThat(desk.said()).contains("Nothing was changed.");
        new Seen(side(page)).all(Text.class).get(LOT).setText("");
        seen().press("Sign\u2026");
        sign("the label says so");
        desk.await(() ->
                new Seen(desk.shell().getShells()[0]).words().stream().anyMatch(text -> text.startsWith("Kit lot: ")));
        assertThat(seen().words()).anyMatch(text -> text.contains("missing") || text.contains("expected"));
        new Seen(desk.shell().getShells()[0]).press("Cancel");

        new Seen(side(page)).all(Text.class).get(LOT).setText("HZ-261103");
        new Seen(side(page)).all(Text.class).get(3).setText("B-4711");
        seen().press("Sign\u2026");
        sign("the label says so");
        desk.await(() -> seen().words().stream().anyMatch(text -> text.startsWith("Corrected: the label says so, ")));
        assertThat(seen().words())
                .anyMatch(text -> text.startsWith("Recorded, "))
                .anyMatch(text -> text.startsWith("Signed by Rui Paz"));
        assertThat(house.ledger().results().find(kept.id()).orElseThrow().row().batch())
                .contains("B-4711");
    }

    @Test
    @Meets("ISO 22000 8.9.2, 8.9.4, 10.1")
    void a_positive_is_not_corrected_away() {
        Kept kept = house.tested("S-1", "07", "control hook test");
        LedgerPart page = page(kept, ReleaseHouse.RUI);
        seen().press("Correct\u2026");
        desk.await(() -> seen().words().contains("Correct S-1"));
        StripDrawing strip = new Seen(side(page)).all(StripDrawing.class).get(0);
        strip.line(wickbench.api.method.LineRole.TEST);
        Event key = new Event();
        key.character = 'n';
        key.keyCode = 'n';
        strip.notifyListeners(SWT.KeyDown, key);
        seen().press("Sign\u2026");
        sign("surely not");
        desk.await(() -> new Seen(desk.shell().getShells()[0])
                .words().stream().anyMatch(text -> text.contains("a correction cannot take that away")));
        assertThat(house.ledger().results().find(kept.id()).orElseThrow().row().outcome())
                .isEqualTo(Outcome.POSITIVE);
    }

    @Test
    void who_may_not_is_told_so_and_sees_no_form() {
        Kept kept = house.tested("S-1", "07", "control hook");
        page(kept, ReleaseHouse.LEA);
        seen().press("Correct\u2026");
        desk.await(() -> desk.said().stream().anyMatch(text -> text.contains("asks for the role reviewer")));
        assertThat(seen().words()).doesNotContain("Correct S-1");
    }

    private LedgerPart page(Kept kept, PersonId who) {
        desk = new TestDesk(false, 100, 1280, 900, Optional.of(who));
        LedgerPart page = desk.open(parent -> {
            LedgerPart part = new LedgerPart(parent, desk, house.ledger(), house.doors());
            part.show(kept.id().toString());
            return part;
        });
        desk.await(() -> page.table()
                .filter(table ->
                        table.selected().stream().anyMatch(row -> row.id().equals(kept.id())))
                .isPresent());
        return page;
    }

    private void sign(String reason) {
        desk.await(() -> desk.shell().getShells().length > 0);
        Shell sheet = desk.shell().getShells()[0];
        new Seen(sheet).all(Text.class).get(0).setText(reason);
        new Seen(sheet).all(Text.class).get(1).setText(ReleaseHouse.RUIS);
        new Seen(sheet).press("Sign the correction");
    }

    private static Composite side(LedgerPart page) {
        return page.side().orElseThrow().content();
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }
}
