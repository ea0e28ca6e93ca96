package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;
import static wickbench.bench.Sheets.complaint;
import static wickbench.bench.Sheets.read;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.LineRole;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Visual;
import wickbench.testing.Meets;

class RunSheetTest {

    @Test
    @Meets("ISO/IEC 17025 7.3.3")
    void reads_a_row_as_it_stands() {
        Reading reading = only(HEADER + GOOD_ROW);

        assertThat(reading.sample().code()).isEqualTo("S1");
        assertThat(reading.route()).isEqualTo(Route.SWAB_DRY);
        assertThat(reading.times().started()).contains(Instant.parse("2026-03-02T06:32:00Z"));
        assertThat(reading.times().shaken()).contains(Duration.ofSeconds(60));
        assertThat(reading.strip().lines())
                .containsEntry(LineRole.CONTROL, Seen.SEEN)
                .containsEntry(LineRole.HOOK, Seen.SEEN)
                .containsEntry(LineRole.TEST, Seen.NOT_SEEN);
        assertThat(reading.origin()).isEqualTo(new Reading.Origin.Sheet("sheet.csv", 2));
    }

    @Test
    void finds_columns_in_any_order_and_optional_ones() {
        String header = "seen,read,started,shaken_s,extracted,out_of_fridge,operator,lot,route,method,place,sample,"
                + "dilution,batch,line,reason,visual,area_cm2,control,check:residual sanitiser\n";
        String row = "!control ~test,,,,,,ana,L77,swab-dry,nut-swab,Filler,S2,"
                + "1+9,B7,Line 2,before cleaning,soiled,50,low positive,1.5\n";

        Reading reading = only(header + row);

        assertThat(reading.strip().control()).isEqualTo(Seen.DAMAGED);
        assertThat(reading.strip().test()).isEqualTo(Seen.FAINT);
        assertThat(reading.times().started()).isEmpty();
        assertThat(reading.sample().dilution()).isEqualByComparingTo("10");
        assertThat(reading.sample().reason()).contains(Reason.BEFORE_CLEANING);
        assertThat(reading.sample().visual()).contains(Visual.SOILED);
        assertThat(reading.sample().area()).contains(new BigDecimal("5E+1"));
        assertThat(reading.sample().control()).contains(RunControl.LOW_POSITIVE);
        assertThat(reading.preChecks()).containsEntry("residual sanitiser", new BigDecimal("1.5"));
    }

    @Test
    void understands_semicolons_decimal_commas_and_a_byte_order_mark() {
        String text = "\uFEFF" + (HEADER + GOOD_ROW).replace(',', ';').replace(";60;", ";60,5;");

        assertThat(only(text).times().shaken()).contains(Duration.ofMillis(60_500));
    }

    @Test
    void reads_utf16_with_its_byte_order_mark() {
        byte[] bytes = (HEADER + GOOD_ROW.replace("filler", "Füller")).getBytes(StandardCharsets.UTF_16);

        assertThat(read(new ByteArrayInputStream(bytes))
                        .orRefuse()
                        .get(0)
                        .sample()
                        .place())
                .isEqualTo("Line 2 Füller");
    }

    @Test
    void reads_times_without_offset_in_the_zone_of_the_site() {
        String row = GOOD_ROW.replace("2026-03-02T07:32:00+01:00", "2026-03-02 07:32");

        assertThat(only(HEADER + row).times().started()).contains(Instant.parse("2026-03-02T06:32:00Z"));
    }

    @Test
    void keeps_the_sites_own_reason_in_its_words() {
        Reading reading = only(
                HEADER.replace("seen", "seen,reason") + GOOD_ROW.replace("control hook", "control hook,auditor asked"));

        assertThat(reading.sample().reason()).contains(Reason.OTHER);
        assertThat(reading.sample().reasonText()).isEqualTo(Optional.of("auditor asked"));
    }

    @Test
    void passes_over_blank_lines_and_counts_them() {
        String text = HEADER + "\n" + GOOD_ROW + ",,,,,,,,,,,\n" + GOOD_ROW.replace("S1", "S2");

        assertThat(read(text).orRefuse())
                .extracting(reading -> ((Reading.Origin.Sheet) reading.origin()).line())
                .containsExactly(3, 5);
    }

    // the repeated hour of 25 October 2026 and the skipped hour of 29 March 2026: IANA tz database, Europe/Madrid
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ,nut-swab,              | ,walnut-swab,         | sheet.csv:2: method: there is no method 'walnut-swab'; issue it, or name its file
            2026-03-02T07:37:30     | 2026-03-02T07:31:59   | sheet.csv:2: read: lies before the start at 2026-03-02T07:32:00+01:00
            2026-03-02T07:00:00     | 2026-03-02T07:33:00   | sheet.csv:2: out_of_fridge: lies after the start at 2026-03-02T07:32:00+01:00
            2026-03-02T07:32:00     | 2026-02-30T07:32:00   | sheet.csv:2: started: expected an ISO 8601 time such as 2026-03-31T08:05:00+02:00, found '2026-02-30T07:32:00+01:00'
            2026-03-02T07:32:00+01:00 | 2026-10-25T02:30    | sheet.csv:2: started: '2026-10-25T02:30' happens twice in Europe/Madrid: the clocks repeat that hour; state the offset, as in +02:00
            2026-03-02T07:32:00+01:00 | 2026-03-29T02:30    | sheet.csv:2: started: '2026-03-29T02:30' does not exist in Europe/Madrid: the clocks skip that hour; state the offset
            swab-dry                | swab-wet              | sheet.csv:2: route: nut-swab is written for the route swab-dry, not swab-wet
            swab-dry                | swab                  | sheet.csv:2: route: expected one of rinse, swab-dry, swab-wet, food-solid, food-liquid, found 'swab'
            ,60,                    | ,a minute,            | sheet.csv:2: shaken_s: expected a number, found 'a minute'
            ,60,                    | ,-1,                  | sheet.csv:2: shaken_s: expected seconds from 0 on, to the millisecond, found -1
            ,60,                    | ,1.2345678901234567,  | sheet.csv:2: shaken_s: '1.2345678901234567' has more than 15 significant digits
            control hook            | control hook hook     | sheet.csv:2: seen: the hook line is named twice
            control hook            | control third         | sheet.csv:2: seen: expected one of control, hook, test, found 'third'
            S1                      | ''                    | sheet.csv:2: sample: is blank; expected a value
            ana                     | ''                    | sheet.csv:2: operator: is blank; expected a value
            L77                     | ''                    | sheet.csv:2: lot: is blank; expected a value
            ,L77,                   | ,L77,L78,             | sheet.csv:2: has 13 cells, the header names 12
            """)
    void names_the_line_and_column_of_what_is_wrong(String good, String bad, String complaint) {
        assertThat(complaint(read(HEADER + GOOD_ROW.replace(good, bad)))).isEqualTo(complaint);
    }

    @Test
    void refuses_a_hook_line_on_a_strip_that_has_none() {
        String row = GOOD_ROW.replace("nut-swab,swab-dry", "gluten-rinse,rinse");

        assertThat(complaint(read(HEADER + row))).isEqualTo("sheet.csv:2: seen: a competitive strip has no hook line");
    }

    @Test
    void refuses_a_dilution_that_can_be_read_in_two_ways() {
        String text = HEADER.replace("seen", "seen,dilution") + GOOD_ROW.replace("control hook", "control hook,1:10");

        assertThat(complaint(read(text)))
                .isEqualTo(
                        "sheet.csv:2: dilution: '1:10' can be read in two ways; write 1+9, or 10 for ten times thinner");
    }

    @Test
    void tells_every_complaint_of_a_sheet_at_once() {
        String text = HEADER + GOOD_ROW + GOOD_ROW.replace("nut-swab", "none") + GOOD_ROW.replace(",60,", ",x,");

        assertThat(read(text).complaints())
                .extracting(complaint -> complaint.line().getAsInt())
                .containsExactly(3, 4);
    }

    private static Reading only(String text) {
        List<Reading> readings = read(text).orRefuse();
        assertThat(readings).hasSize(1);
        return readings.get(0);
    }
}
