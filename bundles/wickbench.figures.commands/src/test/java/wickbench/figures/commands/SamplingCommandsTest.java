package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SamplingCommandsTest {

    /** Computed with R 4.2.2 and epiR 2.0.57; 59 is a textbook value, from memory. */
    @Test
    void samples() {
        assertThat(n("--prevalence", ".05", "--confidence", ".95")).isEqualTo(59);
        assertThat(n("--prevalence", ".05", "--confidence", ".95", "--lot", "100"))
                .isEqualTo(45);
        assertThat(n("--prevalence", ".05", "--confidence", ".95", "--sensitivity", ".9"))
                .isEqualTo(66);
        assertThat(n("--prevalence", ".05", "--confidence", ".95", "--sensitivity", ".9", "--lot", "500"))
                .isEqualTo(63);
    }

    @Test
    void every_answer_about_samples_says_that_they_must_be_random() {
        assertThat(Call.forPeople("samples", "--prevalence", ".05", "--confidence", ".95")
                        .lines())
                .anyMatch(line -> line.startsWith("For random samples only"));
        assertThat(Call.forPeople("acceptance", "--n", "5", "--accept", "1").lines())
                .anyMatch(line -> line.startsWith("For random samples only"));
        assertThat(Call.forPeople("particles", "--per-kg", "5", "--portion", "25")
                        .lines())
                .anyMatch(line -> line.startsWith("For random samples only"));
    }

    /** NIST/SEMATECH e-Handbook §6.2.3.2, n = 52, c = 3, N = 10000: plan from memory, values computed with R 4.2.2. */
    @Test
    void acceptance() {
        Call call = Call.of("acceptance", "--n", "52", "--accept", "3", "--lot", "10000", "--at", ".01,.04");
        assertThat(call.number("acceptance.0.chance")).isEqualTo(.9982, within(0.00005));
        assertThat(call.number("acceptance.1.chance")).isEqualTo(.8460, within(0.00005));
        assertThat(call.number("acceptance.0.inspected")).isEqualTo(70.37, within(0.005));
        assertThat(call.number("acceptance.0.chanceOfLot")).isEqualTo(0.9982356365548789, within(1e-12));
        assertThat(call.number("aoql")).isEqualTo(0.037190, within(5e-7));
    }

    /** ISO 2859-1 plan 80/2 (from memory) and a round of 20 strips with one miss, computed with R 4.2.2. */
    @Test
    void acceptance_of_large_lots_and_of_readers() {
        Call plan = Call.of("acceptance", "--n", "80", "--accept", "2");
        assertThat(plan.number("p95")).isEqualTo(.01030, within(5e-6));
        assertThat(plan.number("p50")).isEqualTo(.03329, within(5e-6));
        assertThat(plan.number("p10")).isEqualTo(.06516, within(5e-6));
        Call round = Call.of("acceptance", "--n", "20", "--accept", "1", "--skill", ".95,.8");
        assertThat(round.number("readers.0.passes")).isEqualTo(.7358, within(0.00005));
        assertThat(round.number("readers.1.passes")).isEqualTo(.0692, within(0.00005));
    }

    /** Computed with R 4.2.2. */
    @Test
    void particles() {
        assertThat(Call.of("particles", "--per-kg", "5", "--portion", "25").number("chance"))
                .isEqualTo(.1175, within(0.00005));
        assertThat(Call.of("particles", "--per-kg", "2", "--portion", "1000", "--clumping", ".5")
                        .number("chance"))
                .isEqualTo(1 - .447214, within(5e-7));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "samples --prevalence 0 --confidence .95",
                "samples --prevalence NaN --confidence .95",
                "samples --prevalence .05 --confidence 0",
                "samples --prevalence .05 --confidence 1",
                "samples --prevalence x --confidence .9",
                "samples --prevalence .05",
                "samples --prevalence .05 --confidence .95 --lot 0",
                "samples --prevalence .01 --confidence .95 --lot 50 --sensitivity .9",
                "acceptance --n 0 --accept 0",
                "acceptance --n 5 --accept 5",
                "acceptance --n 5 --accept -1",
                "acceptance --n 5 --accept 1 --at 1.5",
                "acceptance --n 5 --accept 1 --at NaN --lot 100",
                "acceptance --n 5 --accept 1 --lot 4",
                "acceptance --n 5 --accept 1 --skill 2",
                "particles --per-kg -1 --portion 5",
                "particles --per-kg NaN --portion 5",
                "particles --per-kg 1 --portion 5 --clumping 0"
            })
    void bad_input_is_one_line(String arguments) {
        Call call = Call.of(arguments.split(" "));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.json()).isEmpty();
    }

    private static int n(String... options) {
        String[] arguments = new String[options.length + 1];
        arguments[0] = "samples";
        System.arraycopy(options, 0, arguments, 1, options.length);
        return (int) Call.of(arguments).number("n");
    }
}
