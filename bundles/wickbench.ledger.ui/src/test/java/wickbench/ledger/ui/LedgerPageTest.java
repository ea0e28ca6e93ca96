package wickbench.ledger.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.doubt.Doubt;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.ledger.ResultRow;
import wickbench.testing.Meets;
import wickbench.testing.Recipe;
import wickbench.testing.ui.Seen;
import wickbench.testing.ui.TestDesk;
import wickbench.widgets.Badge;
import wickbench.widgets.FileQuestion;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.TableKit;

/** The page in a window, on a real home. */
class LedgerPageTest {
    private static final int STRIPS = 19;
    private static final int CONTROLS = 2;

    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;

    @BeforeEach
    void found() {
        house = new TestHouse(folder);
        desk = new TestDesk(false, 100, 1180, 900, Optional.empty());
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private LedgerPart page() {
        return desk.open(parent -> new LedgerPart(parent, desk, house.ledger(), house.acts()));
    }

    private Seen seen() {
        return new Seen(desk.shell());
    }

    private LedgerPart pageAt(String argument) {
        return desk.open(parent -> {
            LedgerPart part = new LedgerPart(parent, desk, house.ledger(), house.acts());
            part.show(argument);
            return part;
        });
    }

    @Test
    void an_empty_ledger_says_what_to_do_first() {
        page();

        assertThat(seen().words()).contains(LedgerUiWords.get("ledger.empty.text"));
    }

    @Test
    void filters_narrow_down_and_clear_again() throws IOException {
        house.recordSheet();
        LedgerPart page = page();
        TableKit<ResultRow> table = page.table().orElseThrow();
        assertThat(table.rows()).hasSize(STRIPS);

        page.filters().orElseThrow().put(FilterItem.OUTCOME, "invalid");
        desk.await(() -> table.rows().size() == 4);
        assertThat(table.rows()).extracting(ResultRow::outcome).containsOnly(Outcome.INVALID);
        desk.picture("ledger-invalid");

        page.filters().orElseThrow().put(FilterItem.LINE, "L1");
        desk.await(() -> table.rows().size() == 1);
        page.filters().orElseThrow().put(FilterItem.OUTCOME, "");
        page.filters().orElseThrow().put(FilterItem.LINE, "");
        page.filters().orElseThrow().onlyHeld(true);
        desk.await(() -> table.rows().size() == 6);
        assertThat(table.rows()).allMatch(ResultRow::held);
        // the sheet's low positive control is positive, as it must be, and holds nothing
        assertThat(table.rows()).allMatch(row -> row.control().isEmpty());

        table.filter("pump seal");
        desk.await(() -> table.rows().size() == 1);
        page.filters().orElseThrow().put(FilterItem.TO, "2026-11-19");
        desk.await(() -> table.rows().isEmpty());
    }

    @Test
    void only_negatives_in_doubt_are_left_when_asked_for() throws IOException {
        LotId lot = house.recordSheet().stream()
                .map(Kept::reading)
                .filter(reading -> reading.verdict().outcome() == Outcome.NEGATIVE)
                .findFirst()
                .orElseThrow()
                .reading()
                .lot();
        house.journal()
                .append(List.of(new Draft(
                        new UUID(7, 7),
                        new PersonId("lead"),
                        "lot.rejected",
                        1,
                        Doubt.into(
                                Json.object().with("lot", lot.value()),
                                List.of(Doubt.ofLot("lot.rejected", lot, Optional.empty()))))));
        LedgerPart page = page();
        TableKit<ResultRow> table = page.table().orElseThrow();
        page.filters().orElseThrow().onlyInDoubt(true);
        desk.await(() -> !table.rows().isEmpty() && table.rows().size() < STRIPS);
        assertThat(table.rows()).allMatch(row -> row.inDoubt() && row.lot().equals(lot));
        page.filters().orElseThrow().onlyInDoubt(false);
        desk.await(() -> table.rows().size() == STRIPS);
    }

    @Test
    @Meets("ISO 22000 9.1.2")
    void the_weeks_follow_the_filter_and_fold_away() throws IOException {
        house.recordSheet();
        LedgerPart page = page();
        WeekFold weeks = page.weeks().orElseThrow();
        assertThat(weeks.view().isVisible()).isFalse();
        weeks.fold(false);
        desk.await(() -> weeks.words().contains("strips: " + (STRIPS - CONTROLS))
                && weeks.view().settled());
        assertThat(weeks.words()).contains("invalid: 4");
        desk.picture("ledger-weeks");

        page.filters().orElseThrow().put(FilterItem.OUTCOME, "invalid");
        desk.await(() -> weeks.words().contains("strips: 4"));
        int before = page.side().orElseThrow().control().getSize().y;
        weeks.fold(true);
        desk.settle();
        assertThat(weeks.view().isVisible()).isFalse();
        assertThat(page.side().orElseThrow().control().getSize().y).isGreaterThan(before + 100);
        weeks.fold(false);
        desk.await(() -> weeks.view().settled());
        assertThat(weeks.view().isVisible()).isTrue();
    }

    @Test
    void a_wrong_day_is_told_and_filters_nothing() {
        house.recordSheet();
        LedgerPart page = page();

        page.filters().orElseThrow().put(FilterItem.FROM, "yesterday");

        assertThat(seen().words()).contains("From: a day such as 2026-03-31");
        assertThat(page.table().orElseThrow().rows()).hasSize(STRIPS);
    }

    @Test
    void shows_one_result_from_strip_to_seal() throws IOException {
        Kept kept = house.recordSheet().get(2);
        LedgerPart page = pageAt(kept.id().toString());

        Seen side = new Seen(page.side().orElseThrow().content());
        StripDrawing strip = side.all(StripDrawing.class).get(0);
        assertThat(strip.answers())
                .containsEntry(LineRole.CONTROL, wickbench.api.method.Seen.SEEN)
                .containsEntry(LineRole.HOOK, wickbench.api.method.Seen.NOT_SEEN);
        assertThat(strip.editable()).isFalse();
        assertThat(side.all(Badge.class).stream().map(badge -> badge.shown().word()))
                .contains("Positive, above range");
        String leaf = house.journal().entry(kept.ref()).orElseThrow().leaf().hex();
        assertThat(side.words())
                .contains(
                        "L2 depositor nozzles",
                        "Typed from the sheet run-sheet.csv, line 4",
                        kept.ref().toString())
                .anyMatch(text -> text.replace(" ", "").equals(leaf))
                .anyMatch(text -> text.startsWith("Recorded, ") && text.endsWith("by Ina Moos (op-05)"));
        assertThat(side.all(TimeLine.class).stream().map(TimeLine::words))
                .containsExactly(
                        "Before the start: Out of fridge 05:50:00, Extracted 06:19:00, 29 min, Started 06:21:20, 31 min 20 s",
                        "On the strip: Started 06:21:20, Read 06:26:40, 5 min 20 s");
        desk.picture("ledger-detail");
    }

    @Test
    @Meets("ISO/IEC 17025 7.5.2")
    void a_correction_stands_beside_what_it_corrects() {
        Kept kept = house.recordSheet().get(5);
        house.correct(kept.id(), withLot(kept.reading().reading(), "HZ-261013"), "lot misread");

        LedgerPart page = pageAt(kept.ref().toString());

        assertThat(new Seen(page.side().orElseThrow().content()).words())
                .anyMatch(text -> text.startsWith("Recorded, "))
                .anyMatch(text -> text.startsWith("Corrected: lot misread, "))
                .anyMatch(text -> text.startsWith("HZ-261013, "));
    }

    @Test
    @Meets("21 CFR 117.320")
    void exports_what_is_seen() throws IOException {
        house.recordSheet();
        LedgerPart page = page();
        page.filters().orElseThrow().put(FilterItem.OUTCOME, "positive-above-range");
        TableKit<ResultRow> table = page.table().orElseThrow();
        desk.await(() -> table.rows().size() == 1);
        Path file = folder.resolve("out.csv");

        table.export(file);
        desk.await(() -> Files.exists(file));

        List<String> lines = Files.readAllLines(file);
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1))
                .startsWith("2026-11-20 06:21,\"Positive, above range\",L2 depositor nozzles,L2-03,L2,");
    }

    private static Reading withLot(Reading was, String lot) {
        return new Reading(
                was.sample(),
                was.method(),
                was.route(),
                new LotId(lot),
                was.operator(),
                was.observer(),
                was.times(),
                was.strip(),
                was.second(),
                was.preChecks(),
                was.origin());
    }

    @Test
    void prints_and_packs_what_is_shown(@TempDir Path outside) throws Exception {
        house.recordSheet();
        LedgerPart page = page();
        page.filters().orElseThrow().put(FilterItem.OUTCOME, "invalid");
        desk.await(() -> page.table().orElseThrow().rows().size() == 4);
        page.table().orElseThrow().filter("L1");
        desk.await(() -> page.table().orElseThrow().rows().size() == 1);

        desk.answer(outside.resolve("shown.pdf"));
        seen().press("Print\u2026");
        Seen form = new Seen(page.side().orElseThrow().content());
        form.press("Print\u2026");
        desk.await(() -> desk.said().stream().anyMatch(text -> text.startsWith("Printed to ")));
        assertThat(outside.resolve("shown.pdf")).isNotEmptyFile();
        seen().press("Print\u2026");
        form.choose("Of", "a month");
        form.field("Which").setText("November");
        form.press("Print\u2026");
        assertThat(form.words()).filteredOn("a month such as 2026-03"::equals).hasSize(1);
        form.field("Which").setText("2026-11");
        desk.answer(outside.resolve("month.pdf"));
        form.press("Print\u2026");
        desk.await(() -> desk.said().contains("Printed to " + outside.resolve("month.pdf")));
        assertThat(desk.asked()).extracting(FileQuestion::name).containsExactly("results.pdf", "month-2026-11.pdf");

        desk.answer(outside.resolve("pack"));
        seen().press("Audit pack\u2026");
        assertThat(outside.resolve("pack")).doesNotExist();
        desk.signIn(new PersonId("op-05"));
        desk.answer(outside.resolve("pack"));
        seen().press("Audit pack\u2026");
        desk.await(() -> Files.exists(outside.resolve("pack")));
        assertThat(Files.readString(outside.resolve("pack/pack.json")))
                .contains("\"of\":\"outcome Invalid, with \\\"L1\\\"\"");
        Recipe.Said said = Recipe.run(outside.resolve("pack"), "An audit pack");
        assertThat(said.code()).as(said.text()).isZero();
    }
}
