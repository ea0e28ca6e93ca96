package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class PlanTest {
    private static final Plan HANDBOOK = new Plan(52, 3);
    private static final Plan MONTGOMERY = new Plan(89, 2);

    /** NIST/SEMATECH e-Handbook §6.2.3.2, plan from memory; chances computed with R 4.2.2 (printed .845 and .739 at .04 and .05). */
    @Test
    void operating_characteristic_of_the_handbook() {
        double[] expected = {.9982, .9798, .9295, .8460, .7383, .6196, .5018, .3938, .3003, .2232, .1621, .1152};
        for (int i = 0; i < expected.length; i++) {
            assertThat(HANDBOOK.acceptance((i + 1) / 100d)).isEqualTo(expected[i], within(0.00005));
        }
        assertThat(HANDBOOK.acceptance(.04)).isEqualTo(.845, within(0.001));
        assertThat(HANDBOOK.acceptance(.05)).isEqualTo(.739, within(0.001));
    }

    /** Same plan, lots of 10000; computed with R 4.2.2, whose search for the flat top is good to 1e-5. */
    @Test
    void outgoing_quality_of_the_handbook() {
        OutgoingLimit limit = HANDBOOK.outgoingLimit(10_000);
        assertThat(limit.share()).isEqualTo(0.037190, within(5e-7));
        assertThat(limit.at()).isEqualTo(0.055918, within(1e-5));
        assertThat(HANDBOOK.inspected(.01, 10_000)).isEqualTo(70.37, within(0.005));
        assertThat(HANDBOOK.inspected(.05, 10_000)).isEqualTo(2655.2, within(0.05));
    }

    /** Montgomery, Introduction to Statistical Quality Control, chapter 15, n = 89, c = 2: from memory and recomputed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        ".005, .9897",
        ".01, .9397",
        ".02, .7366",
        ".03, .4985",
        ".04, .3042",
        ".05, .1721",
        ".06, .0919",
        ".07, .0468",
        ".08, .0230",
        ".09, .0109"
    })
    void operating_characteristic_of_the_textbook(double p, double chance) {
        assertThat(MONTGOMERY.acceptance(p)).isEqualTo(chance, within(0.00005));
    }

    /** Same plan, lots of 10000: printed .0093 and 687, from memory; more digits computed with R 4.2.2. */
    @Test
    void outgoing_quality_of_the_textbook() {
        assertThat(MONTGOMERY.outgoing(.01, 10_000)).isEqualTo(.009313, within(5e-7));
        assertThat(MONTGOMERY.outgoing(.01, 10_000)).isEqualTo(.0093, within(5e-5));
        assertThat(MONTGOMERY.inspected(.01, 10_000)).isEqualTo(686.73, within(0.005));
        assertThat(MONTGOMERY.inspected(.01, 10_000)).isEqualTo(687, within(0.5));
    }

    /** Plans of ISO 2859-1 (80/2, 125/3, 200/5 from memory); per cent points computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "80, 2, 1.030, 3.329, 6.516",
        "125, 3, 1.100, 2.930, 5.266",
        "200, 5, 1.314, 2.830, 4.588",
        "50, 1, .715, 3.334, 7.558",
        "13, 0, .394, 5.192, 16.232",
        "20, 0, .256, 3.406, 10.875",
        "32, 0, .160, 2.143, 6.943"
    })
    void shares_that_pass(int n, int accept, double p95, double p50, double p10) {
        Plan plan = new Plan(n, accept);
        assertThat(100 * plan.shareAccepted(.95)).isEqualTo(p95, within(0.0005));
        assertThat(100 * plan.shareAccepted(.50)).isEqualTo(p50, within(0.0005));
        assertThat(100 * plan.shareAccepted(.10)).isEqualTo(p10, within(0.0005));
    }

    /** Two-class plans of ICMSF, n = 5: from memory and recomputed with R 4.2.2; per cent (18.75 printed as 18.7). */
    @ParameterizedTest
    @CsvSource({"0, 59.0, 32.8, 16.8, 3.1", "1, 91.9, 73.7, 52.8, 18.7", "2, 99.1, 94.2, 83.7, 50.0"})
    void two_class_plans(int accept, double at10, double at20, double at30, double at50) {
        Plan plan = new Plan(5, accept);
        assertThat(100 * plan.acceptance(.1)).isEqualTo(at10, within(0.05));
        assertThat(100 * plan.acceptance(.2)).isEqualTo(at20, within(0.05));
        assertThat(100 * plan.acceptance(.3)).isEqualTo(at30, within(0.05));
        assertThat(100 * plan.acceptance(.5)).isEqualTo(at50, within(0.0501));
    }

    /** ICMSF plans that accept none, at 5 % faulty; from memory and recomputed with R 4.2.2; per cent found. */
    @ParameterizedTest
    @CsvSource({"60, 95.39", "30, 78.54", "15, 53.67", "10, 40.13"})
    void plans_that_accept_none(int n, double found) {
        assertThat(100 * (1 - new Plan(n, 0).acceptance(.05))).isEqualTo(found, within(0.005));
    }

    /** Unity values n·p95 and n·p10 of the Poisson law, computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "0, .0513, 2.3026",
        "1, .3554, 3.8897",
        "2, .8177, 5.3223",
        "3, 1.3663, 6.6808",
        "4, 1.9701, 7.9936",
        "5, 2.6130, 9.2747"
    })
    void unity_values(int accept, double np95, double np10) {
        PoissonPlan plan = new PoissonPlan(accept);
        assertThat(plan.unity(.95)).isEqualTo(np95, within(0.00005));
        assertThat(plan.unity(.10)).isEqualTo(np10, within(0.00005));
    }

    /** Hypergeometric law, computed with SciPy 1.17.1. */
    @Test
    void one_lot_with_a_known_number_of_faulty_items() {
        assertThat(HANDBOOK.acceptanceOfLot(10_000, 100)).isEqualTo(0.9982356365548789, within(1e-11));
        assertThat(HANDBOOK.acceptanceOfLot(10_000, 800)).isEqualTo(0.3932143455451001, within(1e-11));
        assertThat(HANDBOOK.acceptanceOfLot(100, 100)).isZero();
        assertThat(HANDBOOK.acceptanceOfLot(100, 3)).isEqualTo(1, within(1e-12));
    }

    @Test
    void the_ends_are_certain() {
        assertThat(HANDBOOK.acceptance(0)).isEqualTo(1);
        assertThat(HANDBOOK.acceptance(1)).isZero();
        assertThat(new PoissonPlan(2).acceptance(0)).isEqualTo(1);
        assertThat(HANDBOOK.outgoingLimit().share())
                .isGreaterThan(HANDBOOK.outgoingLimit(10_000).share());
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, 0", "5, 5", "5, 6", "5, -1", "1000001, 0"})
    void refuses_what_is_no_plan(int n, int accept) {
        assertThatThrownBy(() -> new Plan(n, accept)).isInstanceOf(NoAnswer.class);
    }

    @ParameterizedTest
    @CsvSource({"-.01", "1.01", "NaN"})
    void refuses_what_is_no_share(double p) {
        assertThatThrownBy(() -> HANDBOOK.acceptance(p)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> HANDBOOK.outgoing(p)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_a_lot_smaller_than_its_sample() {
        assertThatThrownBy(() -> HANDBOOK.outgoing(.1, 51)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> HANDBOOK.acceptanceOfLot(100, 101)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> HANDBOOK.shareAccepted(1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new PoissonPlan(-1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new PoissonPlan(1).acceptance(-1)).isInstanceOf(NoAnswer.class);
    }
}
