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
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.json.Json;

/** Proportions, detection and agreement on the command line; the figures behind are held elsewhere. */
class DecisionCommandsTest {
    @TempDir
    private Path folder;

    /** Newcombe, Stat. Med. 17:857 (1998), Table I: 81 of 263. */
    @ParameterizedTest
    @CsvSource({"wilson, .2553, .3662", "wilson-cc, .2535, .3682", "exact, .2527, .3676", "mid-p, .2544, .3658"})
    void proportion_takes_an_interval(String interval, double lower, double upper) {
        Call call = Call.of("proportion", "81", "263", "--interval", interval, "--level", ".95");
        assertThat(call.number("lower")).isEqualTo(lower, within(5.1e-5));
        assertThat(call.number("upper")).isEqualTo(upper, within(5.1e-5));
    }

    /** Fagerland, Lydersen and Laake, Stat. Methods Med. Res. 24:224 (2015): 0.019 to 0.34. */
    @Test
    void difference_answers_limits() {
        Call call = Call.of("difference", "7", "34", "1", "34");
        assertThat(call.number("difference")).isEqualTo(0.1765, within(5.1e-5));
        assertThat(call.number("lower")).isEqualTo(0.0189, within(5.1e-5));
        assertThat(call.number("upper")).isEqualTo(0.3404, within(5.1e-5));
    }

    /** The test values of statsmodels (read). */
    @Test
    void paired_answers_three_tests() {
        Call call = Call.of("paired", "101", "121", "59", "33");
        assertThat(call.number("difference")).isEqualTo(62 / 314d, within(1e-14));
        assertThat(call.number("mcnemar.plain.chi2")).isEqualTo(21.35556, within(5.1e-6));
        assertThat(call.number("mcnemar.corrected.p")).isEqualTo(5.450095e-06, within(5.1e-12));
        assertThat(call.number("mcnemar.exact.p")).isEqualTo(4e-6, within(5e-7));
        assertThat(Call.of("paired", "5", "0", "0", "5").at("mcnemar")).isEqualTo(Json.Null.NULL);
    }

    /** AOAC Official Methods, Appendix J, Table F1 (read). */
    @Test
    void laboratories_answer_variances() throws IOException {
        Call call = Call.of(
                "laboratories",
                file("positives,tests\n7,12\n9,12\n6,12\n10,12\n5,12\n7,12\n5,12\n7,12\n11,12\n9,12\n"));
        assertThat(call.number("lpod.value")).isEqualTo(0.6333, within(5e-5));
        assertThat(call.number("repeatability.sd")).isEqualTo(0.4735, within(5.1e-5));
        assertThat(call.number("laboratory.variance")).isEqualTo(0.0109428, within(5.1e-8));
        assertThat(call.number("reproducibility.variance")).isEqualTo(0.2352, within(5e-5));
        assertThat(call.number("homogeneity.p")).isEqualTo(0.1304, within(5e-5));
    }

    /** Bliss's beetles (from memory; R 4.2.2). */
    @Test
    void detection_answers_limits_with_or_without_a_header() throws IOException {
        String rows =
                "1.6907,59,6\n1.7242,60,13\n1.7552,62,18\n1.7842,56,28\n1.8113,63,52\n1.8369,59,53\n1.8610,62,61\n1.8839,60,60\n";
        for (String text : new String[] {rows, "level,tests,positives\n" + rows}) {
            Call call = Call.of("detection", file(text), "--link", "cloglog", "--dose", "linear");
            assertThat(call.code()).isZero();
            assertThat(call.number("coefficients.1")).isEqualTo(22.04117, within(1e-5));
            assertThat(call.number("se.0")).isEqualTo(3.2403, within(5e-5));
            assertThat(call.number("lod50.value")).isEqualTo(1.778753, within(5.1e-7));
            assertThat(call.number("lod95.value")).isEqualTo(1.845161, within(5.1e-7));
            assertThat(call.number("deviance")).isEqualTo(3.4464, within(5.1e-5));
            assertThat(call.number("df")).isEqualTo(6);
            assertThat(call.at("misfit.flagged")).isEqualTo(new Json.Bool(false));
        }
    }

    @Test
    void a_header_may_name_the_columns_in_another_order() throws IOException {
        Call usual = Call.of("detection", file("1,10,2\n2,10,5\n4,10,9\n"));
        Call other = Call.of("detection", file("positives;note;level;tests\n2;0;1,0;10\n5;0;2,0;10\n9;0;4,0;10\n"));
        assertThat(other.json()).isEqualTo(usual.json());
    }

    @Test
    void a_study_against_itself_has_the_relative_limit_one() throws IOException {
        String study = file("1,10,2\n2,10,5\n4,10,9\n");
        Call call = Call.of("detection", study, "--link", "logit", "--against", study);
        assertThat(call.number("relative.value")).isEqualTo(1, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,10,0;2,10,0 | : none of 20 tests is positive, so the limit lies above all levels and no curve can be told",
                "1,10,2;2,10,11 | :2: positives: 11 is more than tests, which is 10",
                "1,10,2;2,0,0 | :2: tests: expected a whole number from 1 to 1000000000, found 0",
                "1,10,2;2,10,-3 | :2: positives: expected a whole number from 0 on, found -3",
                "1,10,2;2,10 | :2: has 2 cells, expected 3",
                "1,10,2;2,1o,3 | :2: expected a number, found '1o'",
                "1,10,2;NaN,10,3 | :2: expected a number, found 'NaN'",
                "level,tests,positives | : holds no numbers; expected one row a line",
                "-1,10,2;1,10,5 | :1: level: -1.0 has no logarithm; expected a level above 0, or levels that are logarithms already with a linear dose"
            })
    void bad_tables_end_with_one_line(String rows, String complaint) throws IOException {
        Call call = Call.of("detection", file(rows.replace(";", "\n")));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint()).isEqualTo("table.csv" + complaint);
        assertThat(call.json()).isEmpty();
    }

    @Test
    void separated_levels_are_refused_with_the_reason() throws IOException {
        Call call = Call.of("detection", file("1,10,0\n2,10,0\n4,10,10\n"), "--link", "probit");
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint()).startsWith("table.csv: positives and negatives are separated at 2.0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "proportion 5 4",
                "proportion -1 4",
                "proportion 0 0",
                "proportion 1 x",
                "proportion 1 2 --level 0",
                "proportion 1 2 --level 1",
                "proportion 1 2 --level NaN",
                "proportion 1 2 --interval wald",
                "proportion 1",
                "proportion 99999999999999999999 2",
                "difference 1 2 3 2",
                "paired 0 0 0 0",
                "diagnostic 0 0 1 1",
                "diagnostic 1 1 1 1 --prevalence 1.5",
                "detection no-such-file.csv",
                "agreement no-such-file.csv",
                "blank no-such-file.csv"
            })
    void bad_arguments_end_with_one_line(String arguments) {
        Call call = Call.of(arguments.split(" "));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint()).isNotBlank();
        assertThat(call.complaint().lines()).hasSize(1);
        assertThat(call.json()).isEmpty();
    }

    /** CLSI EP17-A2 takes lots apart up to three and reports the largest. */
    @Test
    void blanks_of_several_lots_answer_the_largest() throws IOException {
        Call one = Call.of("blank", file("1\n2\n3\n4\n5\n6\n7\n8\n9\n12\n"), "--rank");
        assertThat(one.number("lob")).isEqualTo(12);
        Call two = Call.of("blank", file("lot,sample,pg\nA,s,1\nA,s,2\nA,s,3\nB,s,5\nB,t,6\nB,t,9\n"));
        assertThat(two.number("lots.1.lob")).isEqualTo(two.number("lob"));
        assertThat(two.number("lots.0.lob")).isLessThan(two.number("lob"));
        Path low = Files.writeString(folder.resolve("low.csv"), "11\n12\n14\n");
        assertThat(Call.of("blank", file("1\n2\n3\n"), "--low", low.toString()).number("lod.uncorrected"))
                .isGreaterThan(2 + 1.645);
    }

    /** Cohen (1960), Table 2: .492 (read); its two published standard errors, R 4.2.2. */
    @Test
    void agreement_names_both_standard_errors() throws IOException {
        String table = file("88,14,18\n10,40,10\n2,6,12\n");
        Call call = Call.of("agreement", table);
        assertThat(call.number("po")).isEqualTo(0.70, within(1e-14));
        assertThat(call.number("kappa")).isEqualTo(0.4915254, within(5.1e-8));
        assertThat(call.number("cohen.se")).isEqualTo(0.0549215, within(5.1e-8));
        assertThat(call.number("fleiss.se")).isEqualTo(0.0510018, within(5.1e-8));
        assertThat(call.number("z")).isEqualTo(9.4562, within(5.1e-5));
        Path weights = Files.writeString(folder.resolve("weights.csv"), "0,1,3\n1,0,6\n3,6,0\n");
        assertThat(Call.of("agreement", table, "--weights", weights.toString()).number("kappa"))
                .isEqualTo(0.3478261, within(5.1e-8));
        assertThat(Call.of("agreement", table, "--weights", "quadratic").code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,2;3 | :2: has 1 cells, expected 2",
                "1,2 | : expected at least two categories, found 1",
                "5,0;0,0 | : all answers are the same, so agreement beyond chance cannot be told",
                "5,1.5;0,0 | :1: count: expected a whole number from 0 on, found 1.5"
            })
    void bad_square_tables_end_with_one_line(String rows, String complaint) throws IOException {
        Call call = Call.of("agreement", file(rows.replace(";", "\n")));
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint()).isEqualTo("table.csv" + complaint);
    }

    @Test
    void raters_answer_each_category() throws IOException {
        Call call = Call.of("raters", file("no,yes\n0,3\n1,2\n3,0\n"));
        assertThat(call.code()).isZero();
        assertThat(call.number("categories.0.share")).isEqualTo(4 / 9d, within(1e-14));
        assertThat(Call.of("raters", file("0,3\n1,1\n")).complaint()).startsWith("table.csv:2: has 2 answers");
    }

    @Test
    void attributes_answer_each_reader() throws IOException {
        Call call = Call.of("attributes", file("item,reader,reading,reference\n1,1,1,1\n1,2,0,1\n2,1,0,0\n2,2,0,0\n"));
        assertThat(call.number("system.value")).isEqualTo(0.5);
        assertThat(call.number("readers.1.misses")).isEqualTo(1);
        assertThat(call.number("readers.1.falseAlarms")).isZero();
        assertThat(Call.of("attributes", file("1,1,2,1\n")).complaint())
                .isEqualTo("table.csv:1: reading: expected 0 or 1, found 2");
    }

    /** Youden, Cancer 3:32 (1950); R 4.2.2. */
    @Test
    void diagnostic_answers_what_follows() {
        Call call = Call.of("diagnostic", "90", "10", "5", "95", "--prevalence", "0.02");
        assertThat(call.number("youden")).isEqualTo(0.85, within(1e-14));
        assertThat(call.number("oddsRatio")).isEqualTo(171, within(1e-9));
        assertThat(call.number("positivePredictiveValue")).isEqualTo(0.0180 / (0.0180 + 0.0490), within(1e-12));
        assertThat(Call.of("diagnostic", "9", "0", "0", "9").at("positiveLikelihoodRatio"))
                .isEqualTo(Json.Null.NULL);
    }

    @Test
    void people_read_a_table_and_the_source() throws IOException {
        Call call = Call.forPeople("detection", file("0,5,1\n1,10,2\n2,10,5\n4,10,9\n"));
        assertThat(call.lines()).anyMatch(line -> line.startsWith("lod50.value | "));
        assertThat(call.lines()).anyMatch(line -> line.startsWith("level | tests | positives"));
        assertThat(call.lines()).anyMatch(line -> line.contains("Wilrich"));
        assertThat(call.lines()).anyMatch(line -> line.startsWith("1 blanks were positive"));
        assertThat(call.json()).isEmpty();
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("table.csv"), text).toString();
    }
}
