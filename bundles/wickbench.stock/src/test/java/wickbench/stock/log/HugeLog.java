package wickbench.stock.log;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Set;
import wickbench.stock.LogShape;

/** Reads a logger's file in a program of its own, so that its memory can be little. */
final class HugeLog {
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final LocalDateTime FIRST = LocalDateTime.of(2026, 1, 1, 0, 0);
    private static final int STEP_SECONDS = 3;

    private HugeLog() {}

    /** Writes so many rows, three seconds apart, with one warm hour in the middle. */
    static Path write(Path file, int rows) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("Nr;Datum;Temperatur [°C]\n");
            for (int i = 0; i < rows; i++) {
                LocalDateTime at = FIRST.plusSeconds((long) STEP_SECONDS * i);
                boolean warm = i >= rows / 2 && i < rows / 2 + 1200;
                out.write(i + ";" + at + ":00".repeat(at.getSecond() == 0 ? 1 : 0) + "Z;"
                        + (warm ? "11" : "5," + i % 10) + "\n");
            }
        }
        return file;
    }

    /** Prints what was found, and how often it told how far it was. */
    public static void main(String[] arguments) {
        int[] told = {0};
        Analysis analysis = new Analysis(Set.of(new Range(2, 8)));
        boolean whole = LogFile.open(Path.of(arguments[0]), LogShape.UNSAID, ZONE)
                .read(analysis, (done, total) -> {
                    told[0]++;
                    return true;
                });
        analysis.end();
        System.out.println(whole + " " + analysis.rows() + " "
                + analysis.outside(new Range(2, 8)).size() + " " + (told[0] > 10));
    }
}
