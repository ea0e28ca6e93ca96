package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import wickbench.api.lot.LotId;

class LotsTest {
    private final Lots lots = new Lots(LocalDate.of(2026, 1, 5));
    private final Plant.Kit milk = DemoFiles.plant().kits().get(1);

    @Test
    void a_lot_lasts_its_weeks_and_bears_its_first_day() {
        assertThat(milk.lotWeeks()).isEqualTo(6);
        assertThat(lots.inUse(milk, LocalDate.of(2026, 1, 5))).isEqualTo(new LotId("MK-260105"));
        assertThat(lots.inUse(milk, LocalDate.of(2026, 2, 15))).isEqualTo(new LotId("MK-260105"));
        assertThat(lots.inUse(milk, LocalDate.of(2026, 2, 16))).isEqualTo(new LotId("MK-260216"));
    }
}
