package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Complaint;
import wickbench.api.person.PersonId;
import wickbench.testing.ui.TestDesk;

/** The page in a window, on a real home. */
class BenchPageTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).withMethods();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private BenchPart page(Optional<PersonId> actor) {
        desk = new TestDesk(false, 100, 1180, 760, actor);
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        return page;
    }

    @Test
    void a_wrong_sheet_is_refused_with_line_and_field() throws IOException {
        BenchPart page = page(Optional.of(TestHouse.ACTOR));
        Path sheet = folder.resolve("wrong.csv");
        Files.writeString(
                sheet,
                Files.readString(TestHouse.DEMO.resolve("run-sheet.csv"))
                        .replaceFirst("L2-05,(.*?),hazelnut-swab-dry", "L2-05,$1,walnut-swab-dry"));

        page.show(sheet.toString());

        desk.await(() -> complaint(page).isPresent());
        desk.picture("bench-sheet-wrong");
        assertThat(complaint(page).orElseThrow().line()).hasValue(8);
        assertThat(complaint(page).orElseThrow().field()).isEqualTo("method");
        assertThat(page.sheet().view().recordButton().isEnabled()).isFalse();
    }

    private static Optional<Complaint> complaint(BenchPart page) {
        return page.sheet().view().table().stream()
                .flatMap(table -> table.rows().stream())
                .filter(Complaint.class::isInstance)
                .map(Complaint.class::cast)
                .findFirst();
    }

    @Test
    void a_sheet_is_recorded_whole_and_only_once() throws IOException {
        BenchPart page = page(Optional.of(TestHouse.ACTOR));
        long before = house.entries();

        page.show(TestHouse.DEMO.resolve("run-sheet.csv").toString());
        press(page);
        desk.await(() -> desk.said().size() == 1);
        desk.picture("bench-sheet");

        assertThat(house.entries()).isEqualTo(before + 19);
        assertThat(desk.said().get(0)).startsWith("19 readings recorded and sealed");

        page.show(TestHouse.DEMO.resolve("run-sheet.csv").toString());
        press(page);
        desk.await(() -> desk.said().size() == 2);

        assertThat(house.entries()).isEqualTo(before + 19);
        assertThat(desk.said().get(1)).isEqualTo("All 19 readings stood in the journal before; nothing was added.");
    }

    private void press(BenchPart page) {
        desk.await(() -> page.sheet().view().recordButton().isEnabled());
        assertThat(page.sheet().view().recordButton().getText()).isEqualTo("&Record 19 readings");
        page.sheet().view().recordButton().notifyListeners(SWT.Selection, null);
    }
}
