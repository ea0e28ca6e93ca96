package wickbench.plant.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.plant.book.PlantHome.QUALITY;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Visual;
import wickbench.plant.PointLook;
import wickbench.plant.Retired;
import wickbench.plant.Thing;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validation;
import wickbench.plant.clean.Validity;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.plant.programme.Maintained;
import wickbench.plant.site.Sampling;

class PlantLifeTest {
    private static final Sampling SEAL = new Sampling("L2 pump seal", new MethodId("milk-swab-wet"));

    @TempDir
    private Path folder;

    private PlantHome home;

    @BeforeEach
    void open() {
        home = new PlantHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void the_same_file_again_states_nothing_and_what_is_retired_is_gone() {
        assertThat(home.keeping.state(PlantHome.mill(), QUALITY)).isZero();
        home.keeping.retire(new Retired(Thing.PRODUCT, "fish", "no more made"), QUALITY);
        assertThat(home.book.at(home.book.now()).product("fish")).isEmpty();
        assertThat(home.book.at(PlantHome.START.minusSeconds(1)).lines()).isEmpty();
        assertThatThrownBy(() -> home.keeping.retire(new Retired(Thing.LINE, "L7", "x"), QUALITY))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("L7");
    }

    @Test
    void a_change_makes_its_tests_due_and_readings_do_them() {
        changed("nut-milk", "plain");
        DueItem item = item("L2-change");
        assertThat(item.state()).isEqualTo(DueState.DUE);
        assertThat(item.missing()).hasSize(6);
        assertThat(item("L2-first").missing()).hasSize(1);
        home.read("L2 pump seal", "milk-swab-wet", false);
        assertThat(item("L2-change").missing()).hasSize(5).doesNotContain(SEAL);
        home.after(Duration.ofHours(9));
        assertThat(item("L2-change").state()).isEqualTo(DueState.OVERDUE);
        changed("plain", "milk");
        assertThat(item("L2-change").state()).isEqualTo(DueState.MISSED);
        home.after(Duration.ofDays(60));
        assertThat(item("L2-change").state()).isEqualTo(DueState.MISSED);
        home.keeping.excuse("L2-change", item("L2-change").since(), "line stood still", QUALITY);
        assertThat(item("L2-change").state()).isEqualTo(DueState.EXCUSED);
    }

    @Test
    void nothing_is_due_where_nothing_leaves() {
        changed("milk", "nut-milk");
        assertThat(home.book.due(home.book.now()))
                .noneMatch(item -> item.rule().id().equals("L2-change"));
        changed("milk", "plain");
        assertThat(home.book.due(home.book.now()))
                .noneMatch(item -> item.rule().id().equals("L2-first"));
    }

    @Test
    void weeks_pass_and_each_is_its_own() {
        home.read("L2 pump seal", "milk-swab-wet", false);
        home.after(Duration.ofDays(15));
        List<DueItem> weeks = home.book.due(home.book.now()).stream()
                .filter(item -> item.rule().id().equals("L2-weekly"))
                .toList();
        assertThat(weeks).extracting(DueItem::state).containsExactly(DueState.DONE, DueState.MISSED, DueState.DUE);
        assertThat(weeks.get(1).since()).isEqualTo(Instant.parse("2026-03-08T23:00:00Z"));
    }

    @Test
    void maintenance_asks_for_its_points() {
        home.keeping.maintained(new Maintained("L2", "pump opened", home.book.now()), QUALITY);
        assertThat(item("L2-mended").missing()).extracting(Sampling::place).containsExactly("L2 kettle rim");
        assertThat(item("L2-mended").about()).contains("pump opened");
    }

    @Test
    void the_bench_gets_what_is_missing_and_no_more() {
        changed("milk", "plain");
        home.read("L2 pump seal", "milk-swab-wet", false);
        var tests = new PlannedByRule(home.book).of(item("L2-change").key());
        assertThat(tests).singleElement().satisfies(test -> {
            assertThat(test.place()).isEqualTo("L2 kettle rim");
            assertThat(test.code()).isEqualTo("L2-0302-0900-1");
            assertThat(test.reason()).isEqualTo(Reason.CHANGEOVER);
            assertThat(test.reasonText()).contains("milk → plain");
        });
        assertThat(new PlannedByRule(home.book).of("L2-change@never")).isEmpty();
    }

    @Test
    void a_clean_is_shown_by_what_its_readings_stand_by() {
        home.keeping.open(new Series("CP-2n", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(SEAL)), QUALITY);
        for (int i = 0; i < 3; i++) {
            run(false);
        }
        home.keeping.confirm(new Confirmed("CP-2n", LocalDate.parse("2027-03-01"), "three in a row"), QUALITY);
        assertThat(state()).isEqualTo(Validity.VALIDATED);
        assertThatThrownBy(() -> home.keeping.ran(ran(List.of()), QUALITY))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("CP-2n");
        home.after(Duration.ofDays(400));
        assertThat(state()).isEqualTo(Validity.LAPSED);
    }

    @Test
    void a_negative_in_doubt_is_no_pass_until_somebody_decides() {
        home.keeping.open(new Series("CP-2n", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(SEAL)), QUALITY);
        for (int i = 0; i < 3; i++) {
            run(false);
        }
        home.keeping.confirm(new Confirmed("CP-2n", LocalDate.parse("2027-03-01"), "three in a row"), QUALITY);
        assertThat(look("L2 pump seal", home.book.now()).latest().orElseThrow().doubted())
                .isFalse();

        UUID rejected = home.doubt("lot.rejected", new LotId("A-1"));

        assertThat(state()).isEqualTo(Validity.UNDER_WAY);
        assertThat(home.book.at(home.book.now()).clean("CP-2n").orElseThrow().runs())
                .allSatisfy(ran -> assertThat(ran.lacks())
                        .containsExactly(new Validation.Lack(Validation.Why.IN_DOUBT, SEAL.place())));
        PointLook.Latest latest = look("L2 pump seal", home.book.now()).latest().orElseThrow();
        assertThat(latest.outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(latest.doubted()).isTrue();

        home.owed.settle(rejected, Owed.DECIDE, "the recall is of another lot", QUALITY.who(), Optional.empty());

        assertThat(state()).isEqualTo(Validity.VALIDATED);
        assertThat(look("L2 pump seal", home.book.now()).latest().orElseThrow().doubted())
                .isFalse();
    }

    @Test
    void a_positive_or_a_point_without_reading_is_no_pass() {
        home.keeping.open(new Series("CP-2n", "milk", List.of("hardest-soil"), Set.of("milk"), List.of(SEAL)), QUALITY);
        run(false);
        run(true);
        run(false);
        home.keeping.ran(ran(List.of()), QUALITY);
        assertThat(home.book.at(home.book.now()).clean("CP-2n").orElseThrow().passes())
                .isZero();
        assertThatThrownBy(() ->
                        home.keeping.confirm(new Confirmed("CP-2n", LocalDate.parse("2027-03-01"), "hurry"), QUALITY))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void points_show_their_gravest_newest_outcome_as_of_then() {
        Instant before = home.book.now();
        home.read("L2 pump seal", "milk-swab-wet", true);
        Instant between = home.book.now();
        home.read("L2 pump seal", "milk-swab-wet", false);
        home.read("L2 pump seal", "hazelnut-swab-dry", false);
        assertThat(look("L2 pump seal", before.minusSeconds(1)).latest()).isEmpty();
        assertThat(look("L2 pump seal", between.minusSeconds(1))
                        .latest()
                        .orElseThrow()
                        .outcome())
                .isEqualTo(Outcome.POSITIVE);
        assertThat(look("L2 pump seal", home.book.now()).latest().orElseThrow().outcome())
                .isEqualTo(Outcome.NEGATIVE);
        assertThat(look("L2 kettle rim", home.book.now()).latest()).isEmpty();
    }

    @Test
    void a_huge_picture_and_a_point_outside_are_one_line_each() throws IOException {
        Path huge = png(60_000, 60_000);
        assertThatThrownBy(() -> home.keeping.picture(huge, QUALITY))
                .isInstanceOf(BadInput.class)
                .hasMessageMatching("floor.png: 60000 × 60000 pixels are more than [^\n]*");
        assertThat(home.book.at(home.book.now()).picture()).isEmpty();
        assertThatThrownBy(() -> home.keeping.place("L2 pump seal", BigDecimal.ONE, BigDecimal.ONE, QUALITY))
                .isInstanceOf(BadInput.class);
        home.keeping.picture(png(400, 300), QUALITY);
        assertThatThrownBy(() -> home.keeping.place("L2 pump seal", new BigDecimal(400), BigDecimal.ONE, QUALITY))
                .isInstanceOf(BadInput.class)
                .hasMessage("X: 400 lies outside the picture of 400 × 300 pixels");
        home.keeping.place("L2 pump seal", new BigDecimal(100), new BigDecimal(75), QUALITY);
        PointLook look = look("L2 pump seal", home.book.now());
        assertThat(look.spot().orElseThrow().x()).isEqualByComparingTo("0.25");
        assertThat(home.attachments.of(
                        home.index.find(entryOf("floor.pictured")).orElseThrow()))
                .hasSize(1);
    }

    private UUID entryOf(String kind) {
        List<UUID> ids = new java.util.ArrayList<>();
        home.journal.read(home.journal.stations().get(0), 0, entry -> {
            if (entry.kind().equals(kind)) {
                ids.add(entry.id());
            }
            return true;
        });
        return ids.get(0);
    }

    private PointLook look(String point, Instant at) {
        return home.book.looks(at).stream()
                .filter(each -> each.point().name().equals(point))
                .findFirst()
                .orElseThrow();
    }

    private void run(boolean positive) {
        Instant cleaned = home.book.now();
        UUID read = home.read(SEAL.place(), SEAL.method().value(), positive);
        home.keeping.ran(new SeriesRun("CP-2n", Visual.CLEAN, List.of(read), cleaned), QUALITY);
    }

    private SeriesRun ran(List<UUID> readings) {
        return new SeriesRun("CP-2n", Visual.CLEAN, readings, home.book.now());
    }

    private Validity state() {
        return home.book.at(home.book.now()).clean("CP-2n").orElseThrow().state();
    }

    private void changed(String from, String to) {
        home.keeping.changed(new ChangeMade("L2", from, to, home.book.now()), QUALITY);
    }

    private DueItem item(String rule) {
        return home.book.due(home.book.now()).stream()
                .filter(item -> item.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    /** Writes a grey picture of one bit a pixel, row by row, never held in memory. */
    private Path png(int width, int height) throws IOException {
        Path file = folder.resolve("floor.png");
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
            chunk(
                    out,
                    "IHDR",
                    java.nio.ByteBuffer.allocate(13)
                            .putInt(width)
                            .putInt(height)
                            .put(new byte[] {1, 0, 0, 0, 0})
                            .array());
            java.io.ByteArrayOutputStream packed = new java.io.ByteArrayOutputStream();
            try (DeflaterOutputStream zip = new DeflaterOutputStream(packed)) {
                byte[] row = new byte[1 + (width + 7) / 8];
                for (int y = 0; y < height; y++) {
                    zip.write(row);
                }
            }
            chunk(out, "IDAT", packed.toByteArray());
            chunk(out, "IEND", new byte[0]);
        }
        return file;
    }

    private static void chunk(OutputStream out, String type, byte[] data) throws IOException {
        CRC32 crc = new CRC32();
        byte[] name = type.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        crc.update(name);
        crc.update(data);
        out.write(java.nio.ByteBuffer.allocate(4).putInt(data.length).array());
        out.write(name);
        out.write(data);
        out.write(java.nio.ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}
