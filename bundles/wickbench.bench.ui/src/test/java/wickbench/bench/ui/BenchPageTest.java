package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;
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
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors()));
        desk.shell().forceActive();
        page.shown();
        return page;
    }

    @Test
    void records_a_reading_by_keys_alone() throws IOException {
        BenchPart page = page(Optional.of(TestHouse.ACTOR));
        long before = house.entries();

        fillByKeys(new Keyboard(desk));
        desk.await(() -> said(page).equals(BenchUiWords.get("enter-records")));
        desk.picture("bench-judged");
        new Keyboard(desk).enter();
        desk.await(() -> house.entries() == before + 1);
        desk.await(() -> said(page).startsWith("Recorded and sealed as " + house.station() + ":" + before));
        desk.picture("bench-kept");

        RecordedReading kept = lastReading();
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(kept.reading().strip().lines())
                .isEqualTo(Map.of(LineRole.CONTROL, Seen.SEEN, LineRole.HOOK, Seen.SEEN, LineRole.TEST, Seen.FAINT));
        assertThat(kept.reading().lot()).hasToString("hz-1");
        assertThat(kept.reading().sample().code()).isEqualTo("s-4");
        assertThat(kept.reading().sample().place()).isEqualTo("kettle");
        assertThat(kept.reading().times().started()).isPresent();
    }

    /** Method from its list, lot, sample, place, times and lines, and nothing by mouse. */
    private void fillByKeys(Keyboard keys) {
        keys.type("hazelnut-r");
        keys.enter();
        tabs(keys, 2);
        keys.type("hz-1");
        tabs(keys, 1);
        keys.type("s-4");
        tabs(keys, 2);
        keys.type("kettle");
        tabs(keys, 10);
        keys.type(clock().whole(Instant.now().minusSeconds(330)));
        keys.key(SWT.F9);
        keys.type("ssf");
    }

    @Test
    void the_next_strip_keeps_person_method_and_lot() {
        BenchPart page = page(Optional.of(TestHouse.ACTOR));
        long before = house.entries();
        fillByKeys(new Keyboard(desk));
        desk.await(() -> said(page).equals(BenchUiWords.get("enter-records")));
        new Keyboard(desk).enter();
        desk.await(() -> house.entries() == before + 1);
        desk.await(() -> said(page).startsWith("Recorded"));

        page.strip().next();

        EntryForm form = page.strip().view().form();
        assertThat(form.text(Item.METHOD)).isEqualTo("hazelnut-rinse");
        assertThat(form.text(Item.OPERATOR)).isEqualTo("op-05");
        assertThat(form.text(Item.LOT)).isEqualTo("hz-1");
        assertThat(form.text(Item.SAMPLE)).isEmpty();
        assertThat(form.text(Item.STARTED)).isEmpty();
        assertThat(page.strip().view().drawing().answers()).isEmpty();
        assertThat(form.control(Item.SAMPLE).isFocusControl()).isTrue();
    }

    @Test
    void says_beside_a_field_what_is_wrong_with_it_and_records_nothing() throws IOException {
        BenchPart page = page(Optional.of(TestHouse.ACTOR));
        long before = house.entries();
        EntryForm form = page.strip().view().form();
        form.put(Item.METHOD, "hazelnut-swab-dry");
        form.put(Item.AREA, "wide");
        form.put(Item.STARTED, "noon");
        form.control(Item.SAMPLE).setFocus();
        page.strip().changed();

        page.strip().record();

        desk.picture("bench-wrong");
        assertThat(form.said(Item.AREA)).isEqualTo("A number such as 7.5");
        assertThat(form.said(Item.STARTED)).startsWith("A time such as");
        assertThat(said(page)).isEqualTo("Put right first: Area, cm², Started.");
        assertThat(house.entries()).isEqualTo(before);
    }

    @Test
    void nobody_signed_in_records_nothing_and_is_told_so() {
        BenchPart page = page(Optional.empty());
        page.strip().view().form().put(Item.OPERATOR, "op-07");
        fillByKeys(new Keyboard(desk));

        desk.await(() -> said(page).equals(BenchUiWords.get("needed.actor")));
        long before = house.entries();
        page.strip().record();
        assertThat(house.entries()).isEqualTo(before);
    }

    @Test
    void whoever_signs_in_stands_as_reader_unless_another_was_named() {
        BenchPart page = page(Optional.empty());
        EntryForm form = page.strip().view().form();

        desk.signIn(new PersonId("op-07"));
        assertThat(form.text(Item.OPERATOR)).isEqualTo("op-07");

        form.put(Item.OPERATOR, "op-05");
        desk.signIn(new PersonId("op-07"));
        assertThat(form.text(Item.OPERATOR)).isEqualTo("op-05");
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

    private static void tabs(Keyboard keys, int count) {
        for (int i = 0; i < count; i++) {
            keys.tab();
        }
    }

    private static String said(BenchPart page) {
        return page.strip().view().bar().said();
    }

    private SiteClock clock() {
        return new SiteClock(house.doors().home().clock(), house.doors().zone());
    }

    private RecordedReading lastReading() {
        Entry entry = house.journal()
                .entry(new EntryRef(house.station(), house.entries() - 1))
                .orElseThrow();
        return RecordedReadingJson.read("entry", entry.body()).orRefuse();
    }
}
