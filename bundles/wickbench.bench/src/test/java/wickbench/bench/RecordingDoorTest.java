package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.bench.BenchHome.WRITER;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Gate;
import wickbench.api.gate.Question;
import wickbench.api.journal.Entry;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;
import wickbench.testing.Meets;

class RecordingDoorTest {
    private static final String POSITIVE_ROW = GOOD_ROW.replace("control hook", "control hook ~test");

    @TempDir
    private Path folder;

    private BenchHome home;

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    @Meets({"21 CFR 117.145(b), (c)", "21 CFR 117.305(b)", "ISO 22000 8.5.4.3"})
    void keeps_a_reading_with_the_facts_it_was_judged_by() {
        Kept kept = record(GOOD_ROW).get(0);

        Entry entry = home.journal.entry(kept.ref()).orElseThrow();
        RecordedReading body = RecordedReadingJson.read("entry", entry.body()).orRefuse();
        assertThat(entry.by()).isEqualTo(WRITER);
        assertThat(entry.id()).isEqualTo(kept.id());
        assertThat(body).isEqualTo(kept.reading());
        assertThat(body.method().ref()).isEqualTo(Sheets.method("nut-swab").ref());
        assertThat(body.answers()).containsExactly(new Answer.NotChecked("stock"), new Answer.NotChecked("training"));
        assertThat(body.verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
    }

    @Test
    void the_same_sheet_again_adds_nothing_and_says_so() {
        List<Kept> first = record(GOOD_ROW, POSITIVE_ROW);
        long before = home.entries();

        List<Kept> again = record(GOOD_ROW, POSITIVE_ROW);

        assertThat(home.entries()).isEqualTo(before);
        assertThat(again).extracting(Kept::added).containsOnly(false);
        assertThat(again)
                .extracting(Kept::ref)
                .isEqualTo(first.stream().map(Kept::ref).toList());
    }

    @Test
    void a_row_twice_in_one_sheet_is_kept_once() {
        List<Kept> kept = record(GOOD_ROW, GOOD_ROW, POSITIVE_ROW);

        assertThat(kept).extracting(Kept::added).containsExactly(true, false, true);
        assertThat(kept.get(1).ref()).isEqualTo(kept.get(0).ref());
    }

    @Test
    @Meets("ISO/IEC 17025 7.5.1")
    void what_was_recorded_is_known_after_a_restart_with_the_index_lost() throws Exception {
        record(GOOD_ROW);
        home.close();
        try (var files = java.nio.file.Files.walk(folder.resolve("index"))) {
            files.sorted(java.util.Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
        }
        home = new BenchHome(folder);

        assertThat(record(GOOD_ROW)).extracting(Kept::added).containsExactly(false);
    }

    @Test
    void says_when_the_method_was_not_in_force_at_the_start() {
        // the row's strip was started long before this home's methods were issued
        assertThat(rules(record(GOOD_ROW).get(0))).contains("method.not-in-force");
    }

    @Test
    void lets_no_negative_stand_without_a_check_that_the_profile_requires() {
        home.close();
        home = BenchHome.requiring(folder, "stock");

        Kept kept = record(GOOD_ROW).get(0);

        assertThat(kept.reading().verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(kept.reading().answers())
                .containsExactly(new Answer.NotChecked("stock", true), new Answer.NotChecked("training"));
        assertThat(record(POSITIVE_ROW).get(0).reading().verdict().outcome()).isEqualTo(Outcome.POSITIVE);
    }

    @Test
    void records_what_a_gate_would_have_refused_with_its_finding() {
        home.close();
        Gate stock = gate(new Answer.Refused(
                "stock",
                Map.of("expiry", "2026-02-28"),
                List.of(new Answer.Reason("lot.expired", "2026-03-02", "2026-02-28"))));
        home = new BenchHome(folder, stock);

        Kept kept = record(GOOD_ROW).get(0);

        assertThat(kept.added()).isTrue();
        assertThat(kept.reading().verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(rules(kept)).contains("lot.expired").doesNotContain("stock-not-checked");
        assertThat(record(POSITIVE_ROW).get(0).reading().verdict().outcome()).isEqualTo(Outcome.POSITIVE);
    }

    @Test
    @Meets({"21 CFR 117.305(c)", "EU GMP Annex 11 9"})
    void a_correction_stands_beside_what_it_corrects() {
        Kept first = record(GOOD_ROW).get(0);
        Reading now = read(POSITIVE_ROW).get(0);

        Kept corrected = home.door.correct(first.id(), now, "the faint line was overlooked on the sheet", WRITER);

        assertThat(corrected.reading().verdict().outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(home.journal.entry(first.ref())).isPresent();
        assertThat(home.door
                        .correct(first.id(), now, "the faint line was overlooked on the sheet", WRITER)
                        .added())
                .isFalse();
    }

    @Test
    void no_correction_takes_allergen_or_its_sign_away() {
        UUID positive = record(POSITIVE_ROW).get(0).id();
        UUID sign = record(GOOD_ROW.replace("control hook", "hook test")).get(0).id();
        Reading negative = read(GOOD_ROW).get(0);
        long before = home.entries();

        for (UUID held : List.of(positive, sign)) {
            assertThatThrownBy(() -> home.door.correct(held, negative, "slip of the pen", WRITER))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("cannot take that away");
        }
        assertThat(home.entries()).isEqualTo(before);
    }

    @Test
    void a_positive_made_by_a_correction_cannot_be_corrected_away_either() {
        UUID id = record(GOOD_ROW).get(0).id();
        home.door.correct(id, read(POSITIVE_ROW).get(0), "line overlooked", WRITER);

        assertThatThrownBy(() -> home.door.correct(id, read(GOOD_ROW).get(0), "no line after all", WRITER))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void a_correction_of_nothing_is_refused() {
        assertThatThrownBy(
                        () -> home.door.correct(new UUID(1, 2), read(GOOD_ROW).get(0), "why", WRITER))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("there is no reading");
    }

    @Test
    @Meets("ALCOA+ accurate")
    void a_reading_that_does_not_fit_its_method_is_refused_and_nothing_kept() {
        Reading good = read(GOOD_ROW).get(0);
        Reading other = new Reading(
                good.sample(),
                Sheets.method("gluten-rinse").ref().id(),
                good.route(),
                good.lot(),
                good.operator(),
                good.observer(),
                good.times(),
                good.strip(),
                good.second(),
                good.preChecks(),
                good.origin());
        long before = home.entries();

        assertThatThrownBy(() -> home.door.record(List.of(good, other), WRITER))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("competitive");
        assertThat(home.entries()).isEqualTo(before);
    }

    private List<Kept> record(String... rows) {
        return home.door.record(read(rows), WRITER);
    }

    private List<Reading> read(String... rows) {
        return Sheets.read(HEADER + String.join("", rows)).orRefuse();
    }

    private static List<String> rules(Kept kept) {
        return kept.reading().verdict().findings().stream().map(Finding::rule).toList();
    }

    private static Gate gate(Answer answer) {
        return new Gate() {
            @Override
            public String neighbour() {
                return answer.neighbour();
            }

            @Override
            public Answer ask(Question question) {
                return answer;
            }
        };
    }
}
