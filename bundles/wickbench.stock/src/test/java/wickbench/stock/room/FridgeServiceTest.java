package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.attachment.Attachment;
import wickbench.api.check.BadInput;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.progress.Progress;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges.Imported;
import wickbench.stock.LogShape;
import wickbench.stock.LotState;
import wickbench.testing.Meets;

class FridgeServiceTest {
    private static final Instant FIRST = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home")).furnished();
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(2));
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_fridge_that_kept_its_range_touches_nothing() throws IOException {
        Imported done = read(log(i -> 4 + i % 3));
        assertThat(done.added()).isTrue();
        assertThat(done.found()).isEmpty();
        assertThat(done.quarantined()).isEmpty();
        assertThat(home.fridges.all().get(0).lots()).containsExactly("HZ-1");
    }

    @Test
    @Meets("ISO/IEC 17025 6.3.3")
    void a_short_warm_spell_is_told_and_a_long_one_holds_the_lots_until_a_decision() throws IOException {
        Imported brief = read(log(i -> i >= 20 && i < 26 ? 9 : 5 + i % 2));
        assertThat(brief.found()).extracting(Excursion::cause).containsExactly(Cause.WARM);
        assertThat(brief.quarantined()).isEmpty();
        Imported lasting = read(log(i -> i >= 20 && i < 27 ? 9 : 5 + i % 2));
        assertThat(lasting.quarantined()).containsExactly(LOT);
        assertThat(home.lot(LOT).state()).isEqualTo(LotState.QUARANTINED);
        assertThat(home.lot(LOT).quarantines()).singleElement().satisfies(held -> {
            assertThat(held.cause()).isEqualTo(Cause.WARM);
            assertThat(held.at()).isEqualTo(FIRST.plus(Duration.ofMinutes(200)));
        });
        // as of before the excursion it was fit, as of then it was not
        assertThat(home.room.lot(LOT, FIRST).orElseThrow().state()).isEqualTo(LotState.FIT);
        assertThat(home.keeping
                        .release(LOT, Optional.empty(), "within what the maker allows", KEEPER)
                        .state())
                .isEqualTo(LotState.FIT);
    }

    @Test
    void freezing_has_no_allowance() throws IOException {
        assertThat(read(log(i -> i == 20 ? -0.1 : 5 + i % 2)).quarantined()).containsExactly(LOT);
        assertThat(home.lot(LOT).quarantines().get(0).cause()).isEqualTo(Cause.FROZEN);
    }

    @Test
    void hours_in_which_nobody_looked_hold_the_lots_too() throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        for (int i = 0; i < 100; i++) {
            Instant at = FIRST.plus(Duration.ofMinutes(10L * i + (i > 50 ? 300 : 0)));
            text.append(at).append(';').append(5 + i % 2).append('\n');
        }
        Imported done = read(Files.writeString(folder.resolve("gap.csv"), text));
        assertThat(done.found()).extracting(Excursion::cause).containsExactly(Cause.GAP);
        assertThat(done.quarantined()).containsExactly(LOT);
    }

    @Test
    void a_lot_elsewhere_or_of_later_is_not_touched() throws IOException {
        LotId late = new LotId("HZ-2");
        home.receive(late, "2026-12-31", 1);
        assertThat(read(log(i -> i >= 20 && i < 60 ? 12 : 5 + i % 2)).quarantined())
                .containsExactly(LOT);
        assertThat(home.lot(late).state()).isEqualTo(LotState.AWAITING_CHECK);
    }

    @Test
    void the_same_file_adds_nothing_again() throws IOException {
        Path file = log(i -> i >= 20 && i < 60 ? 12 : 5 + i % 2);
        read(file);
        long size = home.journal.size(home.journal.stations().get(0));
        assertThat(read(file).added()).isFalse();
        assertThat(home.journal.size(home.journal.stations().get(0))).isEqualTo(size);
    }

    @Test
    void the_file_lies_beside_its_entry_which_names_its_hash() throws IOException {
        Path file = log(i -> 5 + i % 2);
        Imported done = read(file);
        assertThat(done.unattached()).isEmpty();
        Hash hash = Hash.ofContent(Files.readString(file));
        EntryRef entry = done.entry().orElseThrow();
        assertThat(home.journal.entry(entry).orElseThrow().body().get("sha256")).contains(new Json.Text(hash.hex()));
        assertThat(home.attachments.of(entry)).extracting(Attachment::content).containsExactly(hash);
        try (InputStream kept = home.attachments.open(hash)) {
            assertThat(kept.readAllBytes()).isEqualTo(Files.readAllBytes(file));
        }
    }

    @Test
    void a_file_that_cannot_be_attached_is_taken_in_all_the_same_and_told() throws IOException {
        Path file = Files.write(
                folder.resolve("wide.csv"),
                Files.readString(log(i -> 5 + i % 2)).getBytes(StandardCharsets.UTF_16));
        Imported done = read(file);
        assertThat(done.added()).isTrue();
        assertThat(done.rows()).isEqualTo(100);
        assertThat(done.unattached()).isPresent();
        assertThat(home.attachments.of(done.entry().orElseThrow())).isEmpty();
    }

    @Test
    void a_trace_names_the_entries_that_it_is_drawn_from_so_that_a_reader_finds_them() throws IOException {
        EntryRef file = read(log(i -> 5 + i % 2)).entry().orElseThrow();
        EntryRef typed = home.fridges
                .measured(
                        "F1",
                        FIRST.plus(Duration.ofDays(1)),
                        home.clock.instant(),
                        new BigDecimal("4"),
                        new BigDecimal("6"),
                        KEEPER)
                .entry()
                .orElseThrow();
        assertThat(home.fridges
                        .trace("F1", FIRST, FIRST.plus(Duration.ofDays(9)))
                        .sources())
                .extracting(FridgeTrace.Source::entry, FridgeTrace.Source::readings)
                .containsExactly(tuple(file, 100L), tuple(typed, 0L));
        assertThat(home.fridges
                        .trace("F1", FIRST, FIRST.plus(Duration.ofHours(1)))
                        .sources())
                .extracting(FridgeTrace.Source::entry)
                .containsExactly(file);
    }

    @Test
    void what_was_said_of_a_logger_is_remembered() throws IOException {
        String text = "time;value\n03/02/2026 10:00;4\n03/02/2026 10:10;5\n";
        Path file = Files.writeString(folder.resolve("asked.csv"), text);
        assertThatThrownBy(() -> read(file)).isInstanceOf(BadInput.class);
        LogShape said = new LogShape(
                Optional.of(LogShape.DateOrder.MDY),
                Optional.of(LogShape.Degrees.C),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        home.fridges.read(file, "F1", said, Progress.NONE, KEEPER);
        Path next = Files.writeString(folder.resolve("next.csv"), text.replace("10:", "11:"));
        assertThat(read(next).from()).isEqualTo(Instant.parse("2026-03-02T10:00:00Z"));
    }

    @Test
    void what_the_watcher_stops_is_not_kept() throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        for (int i = 0; i < 70_000; i++) {
            text.append(FIRST.plusSeconds(i)).append(";5\n");
        }
        Path file = Files.writeString(folder.resolve("long.csv"), text);
        long size = home.journal.size(home.journal.stations().get(0));
        Imported stopped = home.fridges.read(file, "F1", LogShape.UNSAID, (done, total) -> false, KEEPER);
        assertThat(stopped.complete()).isFalse();
        assertThat(home.journal.size(home.journal.stations().get(0))).isEqualTo(size);
    }

    @Test
    void a_thermometer_with_memory_counts_for_its_whole_time() {
        Imported done = home.fridges.measured(
                "F1", FIRST, FIRST.plus(Duration.ofHours(24)), new BigDecimal("3"), new BigDecimal("8.5"), KEEPER);
        assertThat(done.found()).extracting(Excursion::cause).containsExactly(Cause.WARM);
        assertThat(done.quarantined()).containsExactly(LOT);
    }

    @Test
    void a_typed_minimum_below_zero_holds_the_lots_as_frozen_and_not_only_as_cold() {
        Imported done = home.fridges.measured(
                "F1", FIRST, FIRST.plus(Duration.ofHours(24)), new BigDecimal("-0.5"), new BigDecimal("6"), KEEPER);
        assertThat(done.found()).extracting(Excursion::cause).containsExactly(Cause.COLD, Cause.FROZEN);
        assertThat(done.quarantined()).containsExactly(LOT);
        assertThat(home.lot(LOT).quarantines())
                .extracting(wickbench.stock.Quarantine::cause)
                .containsExactlyInAnyOrder(Cause.COLD, Cause.FROZEN);
        home.keeping.release(LOT, Optional.empty(), "thawed strips looked at", KEEPER);
        assertThat(home.lot(LOT).quarantines()).isEmpty();
    }

    @Test
    void a_log_that_falls_below_zero_names_the_freezing_beside_the_cold_night() throws IOException {
        read(log(i -> i < 10 || i > 60 ? 5 : i == 40 ? -0.2 : 1));
        assertThat(home.lot(LOT).quarantines())
                .extracting(wickbench.stock.Quarantine::cause)
                .containsExactly(Cause.COLD, Cause.FROZEN);
    }

    @Test
    void a_trace_tells_figures_excursions_and_points() throws IOException {
        read(log(i -> i == 10 ? 9 : 5));
        FridgeTrace trace = home.fridges.trace("F1", FIRST, FIRST.plus(Duration.ofDays(1)));
        assertThat(trace.readings()).isEqualTo(100);
        assertThat(trace.highest()).contains(9.0);
        assertThat(trace.points()).hasSize(100);
        assertThat(trace.kinetic().orElseThrow())
                .isGreaterThanOrEqualTo(trace.mean().orElseThrow());
        assertThat(trace.excursions()).hasSize(1);
        assertThat(home.fridges
                        .trace("F1", FIRST.minusSeconds(99), FIRST.minusSeconds(9))
                        .points())
                .isEmpty();
    }

    private Imported read(Path file) {
        return home.fridges.read(file, "F1", LogShape.UNSAID, Progress.NONE, KEEPER);
    }

    /** A hundred readings, ten minutes apart. */
    private Path log(IntToDoubleFunction celsius) throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        for (int i = 0; i < 100; i++) {
            text.append(FIRST.plus(Duration.ofMinutes(10L * i)))
                    .append(';')
                    .append(celsius.applyAsDouble(i))
                    .append('\n');
        }
        return Files.writeString(folder.resolve("log-" + text.toString().hashCode() + ".csv"), text);
    }
}
