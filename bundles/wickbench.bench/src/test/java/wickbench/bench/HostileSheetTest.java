package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;
import static wickbench.bench.Sheets.complaint;
import static wickbench.bench.Sheets.read;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Sheets that are no sheets: refused with a line, before they fill the memory. */
class HostileSheetTest {

    @Test
    void a_line_of_a_gigabyte_is_refused_after_its_first_part() {
        Endless endless = new Endless(1L << 30);

        String complaint = complaint(read(new SequenceInputStream(bytes(HEADER), endless)));

        assertThat(complaint)
                .isEqualTo("sheet.csv:2: is longer than 65536 characters; is this a CSV file with line ends?");
        assertThat(endless.taken).isLessThan(1 << 20);
    }

    @Test
    void a_file_without_any_line_end_is_refused_too() {
        assertThat(complaint(read(new Endless(1L << 30))))
                .isEqualTo("sheet.csv:1: is longer than 65536 characters; is this a CSV file with line ends?");
    }

    @Test
    void a_nul_is_refused_with_its_line() {
        assertThat(complaint(read(HEADER + GOOD_ROW + "S2\0")))
                .isEqualTo("sheet.csv:3: holds a NUL character; expected plain text");
    }

    @Test
    void bytes_that_are_not_utf8_are_refused() {
        byte[] latin = (HEADER + GOOD_ROW.replace("filler", "Füller")).getBytes(StandardCharsets.ISO_8859_1);

        assertThat(complaint(read(new ByteArrayInputStream(latin))))
                .contains("is not UTF-8 text; save the sheet as CSV in UTF-8");
    }

    @Test
    void quotes_that_do_not_close_are_refused_with_the_line_they_open_on() {
        assertThat(complaint(read(HEADER + GOOD_ROW + "\"S2,Filler\n" + GOOD_ROW)))
                .isEqualTo("sheet.csv:3: a quotation mark is not closed, or stands in the wrong place");
    }

    @Test
    void a_million_columns_are_refused() {
        assertThat(complaint(read("a,".repeat(1_000_000)))).contains("is longer than 65536 characters");
    }

    @Test
    void a_column_named_twice_an_unknown_and_a_missing_one_are_each_named() {
        String complaints = complaint(read(HEADER.replace("place", "sample").replace("lot", "batch no") + GOOD_ROW));

        assertThat(complaints)
                .contains("sheet.csv:1: sample: stands twice in the header")
                .contains("sheet.csv:1: batch no: is not a column of a run sheet")
                .contains("sheet.csv:1: place: is missing in the header")
                .contains("sheet.csv:1: lot: is missing in the header");
    }

    @Test
    void an_empty_file_is_refused() {
        assertThat(complaint(read(""))).isEqualTo("sheet.csv:1: is empty; expected a header line");
    }

    @Test
    void no_more_complaints_are_told_than_a_person_reads() {
        assertThat(read(HEADER + GOOD_ROW.replace("nut-swab", "none").repeat(500))
                        .complaints())
                .hasSize(20);
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A stream of one letter that counts how much of it was taken. */
    private static final class Endless extends InputStream {
        private final long length;
        private long taken;

        Endless(long length) {
            this.length = length;
        }

        @Override
        public int read() {
            return taken++ < length ? 'x' : -1;
        }
    }
}
