package wickbench.stock.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.progress.Progress;
import wickbench.stock.Cause;
import wickbench.stock.LogShape;

/** Files that no logger should write, and files larger than memory. */
class HostileLogTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final Range RANGE = new Range(2, 8);
    private static final int SMALL_HEAP_MB = 24;

    @TempDir
    private Path folder;

    @Test
    void a_file_many_times_larger_than_memory_is_streamed_with_progress() throws Exception {
        Path file = HugeLog.write(folder.resolve("huge.csv"), 2_000_000);
        assertThat(Files.size(file)).isGreaterThan(2L * SMALL_HEAP_MB << 20);
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + SMALL_HEAP_MB + "m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        HugeLog.class.getName(),
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(program.waitFor()).as(said).isZero();
        // one warm hour, and every row of it
        assertThat(said.strip()).isEqualTo("true 2000000 1 true");
    }

    @Test
    void a_line_without_end_is_refused_after_its_first_part_whichever_row_comes_first() throws IOException {
        for (boolean newestFirst : new boolean[] {false, true}) {
            Path file = folder.resolve("line.csv");
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                out.write("time;°C\n".getBytes(StandardCharsets.ISO_8859_1));
                row(out, newestFirst ? 20 : 10);
                row(out, newestFirst ? 10 : 20);
                byte[] part = new byte[1 << 20];
                Arrays.fill(part, (byte) 'x');
                for (int i = 0; i < 100; i++) {
                    out.write(part);
                }
                out.write('\n');
            }
            assertThat(complaint(file)).contains("line.csv:4").contains("longer than 8192");
        }
    }

    private static void row(OutputStream out, int minute) throws IOException {
        out.write(("2026-03-05T08:" + minute + ":00Z;5\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void a_million_columns_nul_bytes_and_an_open_quote_are_refused_with_their_line() throws IOException {
        String head = "time;°C\n2026-03-05T08:00:00Z;4\n";
        assertThat(complaint(head + "2026-03-05T08:10:00Z" + ";1".repeat(1_000_000) + "\n"))
                .contains(":3");
        assertThat(complaint(head + "2026-03-05T08:10:00Z;4\0\n"))
                .contains(":3")
                .contains("NUL");
        assertThat(complaint(head + "2026-03-05T08:10:00Z;\"4\n2026-03-05T08:20:00Z;4\n"))
                .contains(":3");
    }

    @Test
    void a_byte_order_mark_and_mixed_encodings_change_no_reading() throws IOException {
        byte[] mixed = concat(
                "\ufefftime;Temperatur [°C]\n2026-03-05T08:00:00Z;4 °C\n".getBytes(StandardCharsets.UTF_8),
                "2026-03-05T08:10:00Z;5 °C\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(read(Files.write(folder.resolve("mixed.csv"), mixed)).rows()).isEqualTo(2);
    }

    @Test
    void two_bytes_a_character_and_the_newest_row_first_are_read_together() throws IOException {
        StringBuilder text = new StringBuilder("\ufeffhead\r\ntime\t°C\r\n");
        for (int i = 59; i >= 0; i--) {
            text.append(String.format("2026-03-05T08:%02d:00Z\t%d%n", i, 3 + i % 4));
        }
        Path file = Files.write(folder.resolve("wide.txt"), text.toString().getBytes(StandardCharsets.UTF_16LE));
        Analysis analysis = read(file);
        assertThat(analysis.rows()).isEqualTo(60);
        assertThat(analysis.from()).isEqualTo(Instant.parse("2026-03-05T08:00:00Z"));
        assertThat(analysis.to()).isEqualTo(Instant.parse("2026-03-05T08:59:00Z"));
    }

    @Test
    void the_hour_that_comes_twice_is_neither_a_gap_nor_an_overlap() throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        // by the wall: 01:00 to 02:59, and again 02:00 to 03:59
        for (String hour : List.of("01", "02", "02", "03")) {
            for (int minute = 0; minute < 60; minute += 10) {
                text.append(String.format("2026-10-25 %s:%02d;%d%n", hour, minute, 4 + minute / 10 % 2));
            }
        }
        Analysis analysis = read(Files.writeString(folder.resolve("autumn.csv"), text));
        assertThat(analysis.rows()).isEqualTo(24);
        assertThat(analysis.outside(RANGE)).isEmpty();
        assertThat(analysis.from()).isEqualTo(Instant.parse("2026-10-24T23:00:00Z"));
        assertThat(analysis.to()).isEqualTo(Instant.parse("2026-10-25T02:50:00Z"));
    }

    @Test
    void a_thermometer_that_does_not_move_shows_nothing_of_its_whole_time() throws IOException {
        StringBuilder text = new StringBuilder("time;°C\n");
        Instant first = Instant.parse("2026-03-05T08:00:00Z");
        for (int i = 0; i < 300; i++) {
            text.append(first.plusSeconds(600L * i))
                    .append(';')
                    .append(i < 100 ? 4 + i % 2 : 5)
                    .append('\n');
        }
        assertThat(read(Files.writeString(folder.resolve("stuck.csv"), text)).outside(RANGE))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.cause()).isEqualTo(Cause.STUCK);
                    assertThat(found.from()).isEqualTo(first.plusSeconds(99 * 600));
                    assertThat(found.to()).isEqualTo(first.plusSeconds(299 * 600));
                });
    }

    private Analysis read(Path file) {
        Analysis analysis = new Analysis(Set.of(RANGE));
        assertThat(LogFile.open(file, LogShape.UNSAID, ZONE).read(analysis, Progress.NONE))
                .isTrue();
        return analysis.end();
    }

    private String complaint(String text) throws IOException {
        return complaint(Files.writeString(folder.resolve("log.csv"), text));
    }

    private String complaint(Path file) {
        List<String> found = new ArrayList<>();
        assertThatThrownBy(() -> read(file)).isInstanceOfSatisfying(BadInput.class, bad -> found.add(bad.getMessage()));
        return found.get(0);
    }

    private static byte[] concat(byte[] one, byte[] other) {
        byte[] all = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, all, one.length, other.length);
        return all;
    }
}
