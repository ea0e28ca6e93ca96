package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.lot.LotId;
import wickbench.api.progress.Progress;
import wickbench.stock.Companion;
import wickbench.stock.Count;
import wickbench.stock.Delivery;
import wickbench.stock.Device;
import wickbench.stock.LogShape;
import wickbench.testing.Schemas;

/** Every kind of entry that this bundle writes, held against its published schema. */
class EntrySchemaTest {
    private static final Set<String> KINDS = Set.of(
            "kit.defined",
            "lot.received",
            "lot.checked",
            "lot.check-waived",
            "lot.rejected",
            "lot.quarantined",
            "lot.released",
            "lot.opened",
            "lot.taken",
            "lot.counted",
            "lot.placed",
            "lot.used-up",
            "lot.destroyed",
            "device.calibrated",
            "device.retired",
            "fridge.registered",
            "fridge.mapped",
            "fridge.logged",
            "fridge.measured");

    @TempDir
    private Path folder;

    @Test
    void every_entry_is_as_its_schema_says() throws Exception {
        Schemas schemas = Schemas.published();
        try (StockHome home = new StockHome(folder.resolve("home")).furnished()) {
            live(home);
            List<Entry> entries = new ArrayList<>();
            home.journal.read(home.journal.stations().get(0), 0, entries::add);
            Set<String> kinds = new TreeSet<>();
            for (Entry entry : entries) {
                if (KINDS.contains(entry.kind())) {
                    kinds.add(entry.kind());
                    assertThat(schemas.errors(
                                    entry.kind() + "-1.schema.json",
                                    entry.body().canonical()))
                            .as(entry.kind())
                            .isEmpty();
                }
            }
            assertThat(kinds).isEqualTo(new TreeSet<>(KINDS));
        }
        assertThat(schemas.errors(
                        "kit-1.schema.json", KitJson.write(StockHome.kit()).canonical()))
                .isEmpty();
    }

    /** Lets everything happen once. */
    private void live(StockHome home) throws Exception {
        Delivery box = home.delivery(LOT, "2026-12-31", 2);
        home.keeping.receive(
                new Delivery(
                        box.kit(),
                        box.lot(),
                        box.expiry(),
                        box.boxes(),
                        box.at(),
                        Optional.of("3"),
                        Optional.of("SN1"),
                        Optional.of(LocalDate.parse("2026-01-15")),
                        box.place(),
                        List.of(new Companion("buffer", new LotId("B-1"), Optional.of(LocalDate.parse("2026-11-30")))),
                        Optional.of("(10)HZ-1")),
                KEEPER);
        home.after(Duration.ofHours(1)).check(LOT, true, true);
        home.keeping.check(LOT, KEEPER);
        home.keeping.open(LOT, home.clock.instant(), Map.of("buffer", new LotId("B-1")), KEEPER);
        home.keeping.take(LOT, "strip", BigDecimal.ONE, "training", KEEPER);
        home.keeping.count(
                new Count(LOT, home.clock.instant(), 1, 2, Map.of("buffer", BigDecimal.TEN), Optional.of("fell")),
                KEEPER);
        home.keeping.place(LOT, "F1", home.clock.instant(), KEEPER);
        home.keeping.quarantine(LOT, "dropped", KEEPER);
        home.keeping.release(LOT, Optional.of(LocalDate.parse("2026-04-20")), "looked at", KEEPER);
        home.keeping.reject(LOT, Optional.empty(), "recalled", KEEPER);
        home.keeping.destroy(LOT, "recalled", KEEPER);
        LotId other = new LotId("HZ-2");
        home.receive(other, "2026-12-31", 1);
        home.keeping.waive(other, "same as before", KEEPER);
        home.keeping.count(new Count(other, home.clock.instant(), 0, 0, Map.of(), Optional.of("lent")), KEEPER);
        home.keeping.usedUp(other, KEEPER);
        home.keeping.calibrated(
                new Device(
                        "T1",
                        Device.Type.TIMER,
                        "bench timer",
                        LocalDate.parse("2026-01-01"),
                        LocalDate.parse("2027-01-01"),
                        Optional.of("C-77"),
                        Optional.empty()),
                KEEPER);
        home.keeping.retire("T1", "broken", KEEPER);
        Path log = Files.writeString(
                folder.resolve("log.csv"),
                "time;°C\n2026-03-02 09:00;4\n2026-03-02 09:10;9,5\n2026-03-02 09:20;-0,5\n2026-03-02 09:30;5\n");

        home.fridges.read(log, "F1", zoned(), Progress.NONE, KEEPER);
        home.fridges.measured(
                "F1",
                home.clock.instant().minus(Duration.ofHours(1)),
                home.clock.instant(),
                new BigDecimal("1.5"),
                new BigDecimal("9"),
                KEEPER);
    }

    private static LogShape zoned() {
        return new LogShape(
                Optional.of(LogShape.DateOrder.YMD),
                Optional.of(LogShape.Degrees.C),
                Optional.of(1),
                Optional.empty(),
                Optional.of(2),
                Optional.of("+01:00"));
    }
}
