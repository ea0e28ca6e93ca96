package wickbench.figures.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class ReorderTest {

    /** A course text (read): 7.68 with z rounded to 1.28; 7.6893 exact and the reorder point 70.18 of the print by R 4.2.2. */
    @Test
    void demand_varies() {
        Reorder reorder = Reorder.normal(new Reorder.Supply(2.5, 1.2, 25, 0), .90);
        assertThat(reorder.safety()).isEqualTo(7.6893, within(0.00005));
        assertThat(reorder.safety()).isEqualTo(7.68, within(0.01));
        assertThat(reorder.point()).isEqualTo(70.18, within(0.01));
    }

    /** Waters, Inventory Control (read there): 1129 with z 1.645; 1128.971 exact by R 4.2.2. */
    @Test
    void delivery_varies() {
        Reorder reorder = Reorder.normal(new Reorder.Supply(100, 0, 8, 2), .95);
        assertThat(reorder.point()).isEqualTo(1128.971, within(0.0005));
        assertThat(reorder.point()).isEqualTo(1129, within(0.5));
    }

    /** Inputs from the same course text: N(2000, 400) a year, three weeks; 115.38 + 158.05 = 273.43 with z rounded to 1.645. */
    @Test
    void yearly_demand_and_weeks_of_delivery() {
        Reorder reorder = Reorder.normal(new Reorder.Supply(2000, 400, 3 / 52d, 0), .95);
        assertThat(reorder.leadDemand()).isEqualTo(115.38, within(0.005));
        assertThat(reorder.safety()).isEqualTo(158.05 / 1.645 * 1.6448536, within(0.005));
        assertThat(reorder.point()).isEqualTo(273.43, within(0.02));
    }

    /** Computed with R 4.2.2. */
    @Test
    void both_vary() {
        Reorder reorder = Reorder.normal(new Reorder.Supply(20, 4, 6, 1.5), .95);
        assertThat(reorder.safety()).isEqualTo(51.9107, within(0.00005));
        assertThat(reorder.point()).isEqualTo(171.9107, within(0.00005));
    }

    /** Harris (1913); 141.4214 computed with R 4.2.2, 200 from the course text (yearly 2000, order 200, holding 20 % of 100). */
    @Test
    void order_that_costs_least() {
        assertThat(Reorder.economicQuantity(1200, 50, 6)).isEqualTo(141.4214, within(0.00005));
        assertThat(Reorder.economicQuantity(2000, 200, 20)).isEqualTo(200, within(1e-9));
    }

    /** Computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "1, 2, 3, 3, 4",
        "2, 4, 5, 5, 6",
        "3, 5, 6, 7, 8",
        "5, 8, 9, 10, 11",
        "7.5, 11, 12, 14, 15",
        "10, 14, 15, 17, 18"
    })
    void rare_demand(double leadDemand, int at90, int at95, int at98, int at99) {
        assertThat(Reorder.poisson(leadDemand, .90).point()).isEqualTo(at90);
        assertThat(Reorder.poisson(leadDemand, .95).point()).isEqualTo(at95);
        assertThat(Reorder.poisson(leadDemand, .98).point()).isEqualTo(at98);
        assertThat(Reorder.poisson(leadDemand, .99).point()).isEqualTo(at99);
    }

    @Test
    void no_demand_needs_no_stock() {
        assertThat(Reorder.poisson(0, .99).point()).isZero();
        assertThat(Reorder.normal(new Reorder.Supply(0, 0, 5, 1), .99).point()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 1, 0", "1, -1, 1, 0", "1, 0, -1, 0", "1, 0, 1, -1", "NaN, 0, 1, 0", "1, Infinity, 1, 0"})
    void refuses_what_is_no_supply(double demand, double deviation, double lead, double leadDeviation) {
        assertThatThrownBy(() -> new Reorder.Supply(demand, deviation, lead, leadDeviation))
                .isInstanceOf(NoAnswer.class);
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "-.5", "NaN"})
    void refuses_certainty(double service) {
        Reorder.Supply supply = new Reorder.Supply(1, 0, 1, 0);
        assertThatThrownBy(() -> Reorder.normal(supply, service)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Reorder.poisson(1, service)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_orders_without_cost() {
        assertThatThrownBy(() -> Reorder.economicQuantity(1, 0, 1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Reorder.economicQuantity(1, 1, 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Reorder.poisson(-1, .9)).isInstanceOf(NoAnswer.class);
    }
}
