package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.json.Json;

class TrendCommandTest {
    private static final String SHARES = "25,410 31,520 18,380 40,560 22,400 36,505 29,470 44,610 20,395 33,490";
    private static final String WAFERS = "16 14 28 16 12 20 10 12 10 17 19 17 14 16 15 13 14 16 11 20 11 19 16 31 13";
    private static final String CHANGE =
            "324.925 324.675 324.725 324.350 325.350 325.225 324.125 324.525 325.225 324.600"
                    + " 324.625 325.150 328.325 327.250 327.825 328.500 326.675 327.775 326.875 328.350";

    @TempDir
    Path folder;

    /** p′ after Laney (2002), computed with R 4.2.2. */
    @Test
    void shares() throws IOException {
        Call plain = trend("count,size " + SHARES, "p");
        assertThat(plain.number("centre")).isEqualTo(.0628692, within(5e-8));
        assertThat(plain.number("points.0.upper")).isEqualTo(.09883, within(5e-6));
        assertThat(plain.number("points.0.lower")).isEqualTo(.02691, within(5e-6));
        Call wide = trend(SHARES, "p-prime");
        assertThat(wide.number("sigmaZ")).isEqualTo(1.1191642, within(5e-8));
        assertThat(wide.number("points.3.upper")).isEqualTo(.09731, within(5e-6));
    }

    /** NIST/SEMATECH e-Handbook §6.3.3.1, from memory and recomputed. */
    @Test
    void counts() throws IOException {
        Call call = trend(WAFERS, "c");
        assertThat(call.number("centre")).isEqualTo(16);
        assertThat(call.number("upper")).isEqualTo(28);
        assertThat(call.number("lower")).isEqualTo(4);
        assertThat(call.at("signals.0.text")).isEqualTo(new Json.Text("Point 24: 31 lies above the upper limit 28."));
        assertThat(trend(WAFERS, "c", "--without", "24").number("centre")).isEqualTo(15.375);
        assertThat(trend(WAFERS, "c", "--centre", "20").number("centre")).isEqualTo(20);
    }

    /** NIST/SEMATECH e-Handbook §6.3.2.3, from memory and recomputed: the first signal is point 14 with 4.94. */
    @Test
    void sums() throws IOException {
        Call call = trend(CHANGE, "cusum", "--target", "325", "--k", ".3175", "--h", "4.1959");
        assertThat(call.number("signals.0.point")).isEqualTo(14);
        assertThat(call.number("signals.0.measured")).isEqualTo(4.94, within(5e-5));
        assertThat(call.number("points.19.cusum")).isEqualTo(19.075, within(1e-9));
        Call inSigmas = trend(CHANGE, "cusum", "--target", "325", "--sigma", ".635");
        assertThat(inSigmas.number("k")).isEqualTo(.3175);
        assertThat(inSigmas.number("h")).isEqualTo(3.175);
    }

    /** NIST/SEMATECH e-Handbook §6.3.2.4, from memory and recomputed. */
    @Test
    void averages() throws IOException {
        Call call = trend("52.0 47.0 53.0", "ewma", "--target", "50", "--sigma", "2.0539", "--lambda", ".3");
        assertThat(call.number("points.1.value")).isEqualTo(49.52, within(0.0051));
        assertThat(call.number("upper")).isEqualTo(52.5884, within(5e-5));
        assertThat(call.at("signals")).isEqualTo(new Json.Arr(java.util.List.of()));
        Call starting = trend(
                "52.0 47.0",
                "ewma",
                "--target",
                "50",
                "--sigma",
                "2",
                "--lambda",
                ".3",
                "--L",
                "3",
                "--starting-limits");
        assertThat(starting.number("points.0.upper")).isEqualTo(51.8, within(1e-12));
    }

    /** Formula of Benneyan (2001), computed with R 4.2.2; times by hand. */
    @Test
    void rare_events() throws IOException {
        Call gaps = trend("5 7 2 11 0 3 8 4 1 16 6 9 2 5 3", "g");
        assertThat(gaps.number("centre")).isEqualTo(5.466667, within(5e-7));
        assertThat(gaps.number("upper")).isEqualTo(23.303707, within(5e-7));
        assertThat(gaps.number("lower")).isZero();
        assertThat(gaps.number("likelyUpper")).isEqualTo(39);
        Call times = trend("1 1 1024", "t");
        double y = Math.pow(1024, 0.2777);
        assertThat(times.number("transformed.centre")).isEqualTo((2 + y) / 3, within(1e-12));
        assertThat(times.number("centre")).isEqualTo(Math.pow((2 + y) / 3, 1 / 0.2777), within(1e-9));
        assertThat(times.number("points.2.value")).isEqualTo(1024);
    }

    @Test
    void people_read_signals_in_words() throws IOException {
        assertThat(call(false, WAFERS, "c").lines()).anyMatch(line -> line.contains("Point 24: 31 lies above"));
        assertThat(call(false, "5 6 5 6", "c").lines()).anyMatch(line -> line.startsWith("No signal"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | p | holds no numbers",
                "5,4 | p | line.csv:1: count",
                "1,10 -1,10 | p | :2:",
                "1,10 2 | p | :2:",
                "1,10 x,10 | p | :2:",
                "1,10 NaN,10 | p | :2:",
                "1,0 | p | :1:",
                "0,10 0,10 | p-prime | spread between groups",
                "1,10 | p-prime | at least 2",
                "1.5 | c | whole number",
                "-1 | c | whole number",
                "1 | cusum --k 1 --h 4 | target",
                "1 | cusum --target 5 | sigma",
                "1 | cusum --target NaN --sigma 1 | target",
                "1 | ewma --target 5 | sigma",
                "1 | ewma --target 5 --sigma 1 --lambda 2 | lambda",
                "1 | c --without 2 | without",
                "0 5 | g --minimum 1 | :1:",
                "5 | t | at least 2",
                "5 -1 | t | :2:",
                "5 | pie | p-prime"
            })
    void bad_input_is_one_line(String table, String chart, String complaint) throws IOException {
        Call call = trend(table, chart.split(" "));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.complaint()).contains(complaint.strip());
        assertThat(call.json()).isEmpty();
    }

    private Call trend(String table, String... chartAndOptions) throws IOException {
        return call(true, table, chartAndOptions);
    }

    private Call call(boolean json, String table, String... chartAndOptions) throws IOException {
        Path file = Files.writeString(folder.resolve("line.csv"), table.replace(' ', '\n'));
        String[] arguments = new String[chartAndOptions.length + 3];
        arguments[0] = "trend";
        arguments[1] = file.toString();
        arguments[2] = "--chart";
        System.arraycopy(chartAndOptions, 0, arguments, 3, chartAndOptions.length);
        return json ? Call.of(arguments) : Call.forPeople(arguments);
    }
}
