package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.json.Json;

/** Seeing and levels on the command line. */
class LevelCommandsTest {

    /** Belgian FASFC, opinion 24-2017: 2.9 mg in 400 g are printed as 7.3 mg/kg. */
    @Test
    void action_level_rounds_half_up() {
        Call call = Call.of("action-level", "--dose", "2.9", "--amount", "400");
        assertThat(call.number("mgPerKg")).isEqualTo(7.25);
        assertThat(call.number("oneDecimal")).isEqualTo(7.3);
        assertThat(Call.of("action-level", "--dose", "1", "--amount", "30").number("mgPerKg"))
                .isEqualTo(100 / 3d, within(1e-12));
    }

    /** Common practice, no source. */
    @Test
    void carry_over_answers_both_masses_and_goes_back() {
        Call call = Call.of(
                "carry-over",
                "--swab",
                "5",
                "--area",
                "12",
                "--recovery",
                ".5",
                "--batch",
                "1000",
                "--first-off",
                "20");
        assertThat(call.number("mgPerKg.batch")).isEqualTo(0.012);
        assertThat(call.number("mgPerKg.firstOff")).isEqualTo(0.6);
        Call back = Call.of(
                "carry-over",
                "--action-level",
                "4",
                "--area",
                "3",
                "--recovery",
                ".8",
                "--batch",
                "300",
                "--first-off",
                "10");
        assertThat(back.number("swabLimit.batch")).isEqualTo(3200);
        assertThat(back.number("swabLimit.firstOff")).isEqualTo(106.666666666667);
        Call rinse = Call.of("carry-over", "--rinse", ".5", "--hold-up", "3", "--batch", "500");
        assertThat(rinse.number("mgPerKg.batch")).isEqualTo(0.003);
    }

    @Test
    void doses_tell_how_each_is_known() {
        Call call = Call.of("doses");
        assertThat(call.at("doses.3.name")).isEqualTo(new Json.Text("peanut"));
        assertThat(call.number("doses.3.mgProtein")).isEqualTo(2);
        assertThat(call.at("doses.13.mgProtein")).isEqualTo(Json.Null.NULL);
        assertThat(call.at("doses.14.known")).isEqualTo(new Json.Text("unverified"));
        assertThat(Call.forPeople("doses").lines()).anyMatch(line -> line.startsWith("peanut | peanut | 2"));
    }

    /** Macmillan and Creelman (2005), chapter 1: 1.095 (from memory; R 4.2.2). */
    @Test
    void seeing_answers_plain_and_corrected() {
        Call call = Call.of("seeing", "20", "25", "10", "25");
        assertThat(call.number("plain.dPrime")).isEqualTo(1.0950, within(5.1e-5));
        assertThat(call.number("corrected.dPrime")).isEqualTo(1.0445, within(5.1e-5));
        assertThat(Call.of("seeing", "25", "25", "0", "25").at("plain")).isEqualTo(Json.Null.NULL);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "action-level --dose 0 --amount 100",
                "action-level --dose 1 --amount -5",
                "action-level --dose 1g --amount 5",
                "action-level --dose 1",
                "carry-over --swab 1 --batch 10",
                "carry-over --swab 1 --hold-up 3 --batch 10",
                "carry-over --area 1 --batch 10",
                "carry-over --swab 1 --area 1 --batch 10 --first-off 20",
                "carry-over --swab 1 --area 1 --recovery 0 --batch 10",
                "seeing 3 2 0 1",
                "seeing 0 0 0 1"
            })
    void bad_arguments_end_with_one_line(String arguments) {
        Call call = Call.of(arguments.split(" "));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.json()).isEmpty();
    }
}
