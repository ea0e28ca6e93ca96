package wickbench.stock.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.progress.Progress;
import wickbench.stock.LogShape;
import wickbench.stock.LogShape.DateOrder;
import wickbench.stock.LogShape.Degrees;

class LogFileTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

    @TempDir
    private Path folder;

    /** What was heard. */
    private record Heard(Instant at, double celsius) {}

    @Test
    void semicolons_decimal_commas_header_lines_and_german_dates() throws IOException {
        assertThat(heard("""
                Logger;Fridge 1
                Serial;00123

                Nr;Datum;Temperatur [°C]
                1;13.03.2026 08:00;4,5
                2;13.03.2026 08:10;4,75
                3;13.03.2026 08:20;-0,5
                """))
                .containsExactly(
                        new Heard(Instant.parse("2026-03-13T07:00:00Z"), 4.5),
                        new Heard(Instant.parse("2026-03-13T07:10:00Z"), 4.75),
                        new Heard(Instant.parse("2026-03-13T07:20:00Z"), -0.5));
    }

    @Test
    void american_dates_with_a_clock_column_and_fahrenheit() throws IOException {
        List<Heard> heard = heard("""
                Date,Time,Temp (°F),Humidity (%)
                03/13/2026,8:00:00 AM,41.0,40
                03/13/2026,1:00:00 PM,32,41
                """);
        assertThat(heard)
                .extracting(Heard::at)
                .containsExactly(Instant.parse("2026-03-13T07:00:00Z"), Instant.parse("2026-03-13T12:00:00Z"));
        assertThat(heard.get(0).celsius()).isEqualTo(5.0, within(1e-12));
        assertThat(heard.get(1).celsius()).isEqualTo(0.0, within(1e-12));
    }

    @Test
    void iso_times_with_offset_and_tabs() throws IOException {
        assertThat(heard("timestamp\ttemp_C\n2026-03-01T08:00:00Z\t4.0\n2026-03-01T08:05:00+00:00\t5\n"))
                .extracting(Heard::at)
                .containsExactly(Instant.parse("2026-03-01T08:00:00Z"), Instant.parse("2026-03-01T08:05:00Z"));
    }

    @Test
    void quoted_cells_units_in_cells_and_utf_16() throws IOException {
        Path file = file("\ufeff\"time\",\"value\"\r\n\"2026-03-01 08:00\",\"4,5 °C\"\r\n", StandardCharsets.UTF_16LE);
        assertThat(heard(file, LogShape.UNSAID)).containsExactly(new Heard(Instant.parse("2026-03-01T07:00:00Z"), 4.5));
    }

    @Test
    void a_date_that_could_be_two_is_asked_and_then_remembered() throws IOException {
        Path file = file("time;°C\n05/03/2026 08:00;4\n06/03/2026 08:00;4\n", StandardCharsets.UTF_8);
        assertThat(complaint(file, LogShape.UNSAID)).contains("--date-order");
        LogShape said = new LogShape(
                Optional.of(DateOrder.DMY),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(heard(file, said)).extracting(Heard::at).first().isEqualTo(Instant.parse("2026-03-05T07:00:00Z"));
        assertThat(LogFile.open(file, said, ZONE).shape().order()).contains(DateOrder.DMY);
    }

    @Test
    void a_unit_that_nothing_names_is_asked() throws IOException {
        Path file = file("time;value\n2026-03-05 08:00;4\n2026-03-05 09:00;4\n", StandardCharsets.UTF_8);
        assertThat(complaint(file, LogShape.UNSAID)).contains("--unit");
        LogShape said = new LogShape(
                Optional.empty(),
                Optional.of(Degrees.C),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(heard(file, said)).hasSize(2);
    }

    @Test
    void two_temperatures_are_asked() throws IOException {
        Path file = file("time;T1 °C;T2 °C\n2026-03-05 08:00;4;5\n2026-03-05 09:00;4;5\n", StandardCharsets.UTF_8);
        assertThat(complaint(file, LogShape.UNSAID)).contains("--temperature-column");
    }

    @Test
    void the_hour_that_an_autumn_night_has_twice_is_told_by_the_order() throws IOException {
        assertThat(heard("""
                time;°C
                2026-10-25 02:30;4
                2026-10-25 02:50;4
                2026-10-25 02:10;4
                2026-10-25 02:30;4
                2026-10-25 03:00;4
                """))
                .extracting(Heard::at)
                .containsExactly(
                        Instant.parse("2026-10-25T00:30:00Z"),
                        Instant.parse("2026-10-25T00:50:00Z"),
                        Instant.parse("2026-10-25T01:10:00Z"),
                        Instant.parse("2026-10-25T01:30:00Z"),
                        Instant.parse("2026-10-25T02:00:00Z"));
    }

    @Test
    void an_hour_that_a_spring_night_lacks_asks_for_the_loggers_clock() throws IOException {
        Path file = file("time;°C\n2026-03-29 01:30;4\n2026-03-29 02:30;4\n", StandardCharsets.UTF_8);
        assertThat(complaint(file, LogShape.UNSAID)).contains("log.csv:3").contains("--zone");
        LogShape said = new LogShape(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("+01:00"));
        assertThat(heard(file, said)).extracting(Heard::at).last().isEqualTo(Instant.parse("2026-03-29T01:30:00Z"));
    }

    @Test
    void the_newest_row_first_is_turned_round() throws IOException {
        StringBuilder text = new StringBuilder("head\ntime,°C\n");
        for (int i = 59; i >= 0; i--) {
            text.append(String.format("2026-03-05 08:%02d,%d%n", i, i % 9));
        }
        List<Heard> heard = heard(text.toString());
        assertThat(heard).hasSize(60);
        assertThat(heard.get(0)).isEqualTo(new Heard(Instant.parse("2026-03-05T07:00:00Z"), 0));
        assertThat(heard).extracting(Heard::at).isSorted();
    }

    @Test
    void what_is_wrong_is_named_with_its_line() throws IOException {
        String head = "time;°C\n2026-03-05 08:00;4\n";
        assertThat(complaint(head + "2026-03-05 08:10;abc\n"))
                .contains("log.csv:3")
                .contains("abc");
        assertThat(complaint(head + "2026-03-05 08:00;4\n"))
                .contains("log.csv:3")
                .contains("same time");
        assertThat(complaint(head + "2026-03-05 09:00;4\n2026-03-05 08:30;4\n")).contains("log.csv:4");
        assertThat(complaint(head + "2026-03-05 09:00;400\n"))
                .contains("log.csv:3")
                .contains("400");
        assertThat(complaint(head + "2026-13-05 09:00;4\n")).contains("log.csv:3");
        assertThat(complaint(head + "2026-03-05 09:00\n")).contains("log.csv:3");
        assertThat(complaint(head + "2026-03-05 09:00;\"4\n"))
                .contains("log.csv:3")
                .contains("quotation");
        assertThat(complaint(head + "2026-03-05 09:00;4\0\n"))
                .contains("log.csv:3")
                .contains("NUL");
        assertThat(complaint(head + "x".repeat(1_000_000) + "\n"))
                .contains("log.csv:3")
                .contains("longer");
        assertThat(complaint(head + ";".repeat(5_000) + "\n")).contains("log.csv:3");
        assertThat(complaint("nothing here\n")).contains("no row");
        assertThat(complaint("")).contains("no row");
    }

    @Test
    void an_empty_cell_is_no_reading() throws IOException {
        assertThat(heard("time;°C\n2026-03-05 08:00;4\n2026-03-05 08:10;\n2026-03-05 08:20;---\n2026-03-05 08:30;5\n"))
                .hasSize(2);
    }

    @Test
    void the_watcher_can_stop_it() throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        Instant at = Instant.parse("2026-03-05T08:00:00Z");
        for (int i = 0; i < 70_000; i++) {
            text.append(at.plusSeconds(60L * i)).append(";4\n");
        }
        LogFile log = LogFile.open(file(text.toString(), StandardCharsets.UTF_8), LogShape.UNSAID, ZONE);
        assertThat(log.read((millis, celsius) -> {}, (done, total) -> false)).isFalse();
        assertThat(log.read((millis, celsius) -> {}, Progress.NONE)).isTrue();
    }

    private List<Heard> heard(String text) throws IOException {
        return heard(file(text, StandardCharsets.UTF_8), LogShape.UNSAID);
    }

    private static List<Heard> heard(Path file, LogShape said) {
        List<Heard> heard = new ArrayList<>();
        LogFile.open(file, said, ZONE)
                .read((millis, celsius) -> heard.add(new Heard(Instant.ofEpochMilli(millis), celsius)), Progress.NONE);
        return heard;
    }

    private String complaint(String text) throws IOException {
        return complaint(file(text, StandardCharsets.UTF_8), LogShape.UNSAID);
    }

    private static String complaint(Path file, LogShape said) {
        List<String> found = new ArrayList<>();
        assertThatThrownBy(() -> heard(file, said))
                .isInstanceOfSatisfying(BadInput.class, bad -> found.add(bad.getMessage()));
        return found.get(0);
    }

    private Path file(String text, Charset charset) throws IOException {
        Path file = folder.resolve("log.csv");
        return Files.write(file, text.getBytes(charset));
    }
}
