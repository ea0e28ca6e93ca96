package wickbench.stock.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.chart.Chart;
import wickbench.api.lot.LotId;
import wickbench.stock.Cause;
import wickbench.stock.Device;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Lot;
import wickbench.stock.Outlook;
import wickbench.widgets.Shape;

/** What the page says of lots, scans, fridges, outlook and equipment, apart from any window. */
class PageModelsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-07-20");

    @TempDir
    private Path folder;

    private StockHouse house;
    private Lot lot;

    @BeforeEach
    void found() {
        house = new StockHouse(folder.resolve("home")).furnished();
        lot = house.receive("HZ-1", "2026-08-19", StockHouse.START);
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void what_is_likely_next_follows_from_the_state() {
        assertThat(LotAct.next(lot, TODAY, false)).contains(LotAct.CHECK);
        house.doors().keeping().waive(new LotId("HZ-1"), "as before", house.keeper());
        assertThat(LotAct.next(house.lot("HZ-1"), TODAY, false)).contains(LotAct.OPEN);
        house.doors().keeping().quarantine(new LotId("HZ-1"), "wet", house.keeper());
        assertThat(LotAct.next(house.lot("HZ-1"), TODAY, false)).contains(LotAct.RELEASE);
        assertThat(LotAct.next(house.lot("HZ-1"), LocalDate.parse("2027-01-01"), false))
                .contains(LotAct.DESTROY);
        house.doors().keeping().destroy(new LotId("HZ-1"), "wet", house.keeper());
        assertThat(LotAct.next(house.lot("HZ-1"), TODAY, false)).isEmpty();
    }

    @Test
    void what_the_table_of_moves_forbids_is_not_offered() {
        assertThat(LotAct.values())
                .filteredOn(act -> act.fits(lot, false))
                .doesNotContain(LotAct.RELEASE, LotAct.USED_UP);
        house.doors().keeping().destroy(new LotId("HZ-1"), "wet", house.keeper());
        assertThat(LotAct.values())
                .filteredOn(act -> act.fits(house.lot("HZ-1"), false))
                .containsExactly(LotAct.REJECT);
    }

    @Test
    void a_lot_past_its_day_is_out_of_date_in_word_and_shape_and_its_bar_is_empty() {
        LotTable then = new LotTable(LocalDate.parse("2026-08-20"));
        assertThat(then.state(lot).word()).isEqualTo("out of date");
        assertThat(then.state(lot).shape()).isEqualTo(Shape.CROSS);
        assertThat(then.bar(lot).share()).isZero();
        assertThat(new LotTable(TODAY).days(lot)).isEqualTo("30 days");
        assertThat(new LotTable(TODAY).bar(lot).share()).isEqualTo(30 / 180.0);
    }

    @Test
    void a_scan_with_its_separator_shown_means_the_same() {
        String text = "01" + StockHouse.GTIN + "10HZ-1%s17270331";
        ScanReading sent = ScanReading.of(text.formatted((char) 29), 2026);
        assertThat(sent.lot()).contains("HZ-1");
        assertThat(ScanReading.of(text.formatted('\u241d'), 2026)).isEqualTo(sent);
        assertThat(ScanReading.of("01095201234510121027", 2026).certain()).isFalse();
    }

    @Test
    void a_time_without_a_reading_is_open_in_the_chart_and_its_range_is_shaded() {
        Instant from = Instant.parse("2026-07-01T00:00:00Z");
        Fridge fridge = new Fridge(
                "F1", "Lab", new BigDecimal("3"), new BigDecimal("9"), Optional.empty(), Optional.empty(), List.of());
        Duration hour = Duration.ofHours(1);
        FridgeTrace trace = new FridgeTrace(
                fridge,
                from,
                from.plus(Duration.ofDays(1)),
                List.of(
                        new FridgeTrace.Point(from, hour, 5, 6),
                        new FridgeTrace.Point(from.plus(Duration.ofHours(5)), hour, 5, 12)),
                List.of(
                        new Excursion(Cause.GAP, from.plus(hour), from.plus(Duration.ofHours(5)), 0, 0),
                        new Excursion(
                                Cause.WARM, from.plus(Duration.ofHours(5)), from.plus(Duration.ofHours(7)), 12, 6)),
                Optional.of(6.0),
                Optional.of(6.0),
                Optional.of(5.0),
                Optional.of(12.0),
                2,
                List.of());
        Chart chart = FridgeChart.of(trace, ZoneOffset.UTC);
        assertThat(chart.series().get(0).y()).containsExactly(6, Double.NaN, 12);
        assertThat(chart.series().get(1).y()).containsExactly(5, Double.NaN, 5);
        assertThat(chart.series().get(2).y()).containsExactly(12);
        assertThat(chart.bands()).containsExactly(new Chart.Band(3, 9));
    }

    @Test
    void an_order_is_due_now_soon_or_later_in_word_and_shape() {
        OutlookTable table = new OutlookTable(TODAY);
        assertThat(table.order(outlook(Optional.empty())).shape()).isEqualTo(Shape.RING);
        assertThat(table.order(outlook(Optional.of(TODAY))).word()).isEqualTo("order now");
        assertThat(table.order(outlook(Optional.of(TODAY.plusDays(3)))).shape()).isEqualTo(Shape.DIAMOND);
        assertThat(table.order(outlook(Optional.of(TODAY.plusDays(60)))).word()).isEqualTo("order by 2026-09-18");
        assertThat(RunDown.of(outlook(Optional.of(TODAY)), ZoneOffset.UTC).limits())
                .containsExactly(new Chart.Limit("order at", 13));
    }

    private static Outlook outlook(Optional<LocalDate> order) {
        return new Outlook(
                "kit",
                2,
                1,
                84,
                40,
                12.2,
                4,
                "normal",
                Optional.empty(),
                order,
                3,
                List.of(new Outlook.Step(TODAY, 40), new Outlook.Step(TODAY.plusDays(1), 38)),
                List.of());
    }

    @Test
    void equipment_is_in_date_due_soon_overdue_or_out_of_use() {
        DeviceTable table = new DeviceTable(TODAY);
        assertThat(table.standing(device(TODAY.minusDays(1), false)).word()).isEqualTo("overdue");
        assertThat(table.standing(device(TODAY, false)).word()).isEqualTo("due soon");
        assertThat(table.standing(device(TODAY.plusDays(90), false)).word()).isEqualTo("in date");
        assertThat(table.standing(device(TODAY.minusDays(1), true)).word()).isEqualTo("out of use");
    }

    private static Device device(LocalDate due, boolean retired) {
        return new Device(
                "PT-1",
                Device.Type.PIPETTE,
                "Pipette",
                TODAY.minusDays(300),
                due,
                Optional.empty(),
                retired ? Optional.of(StockHouse.START) : Optional.empty());
    }
}
