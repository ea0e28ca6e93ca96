package wickbench.benchmarks;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Prints the table: {@code [--long] [--only WORD] [--minutes N] FOLDER}, the folder being on the disk that is to be measured.
 *
 * <p>Ends with 0 when every goal was met, else 1; what is measured is told on standard error meanwhile.
 */
public final class Bench {
    private Bench() {}

    public static void main(String[] arguments) throws Exception {
        List<String> given = new ArrayList<>(Arrays.asList(arguments));
        boolean full = given.remove("--long");
        Duration patience = minutes(given);
        int only = given.indexOf("--only");
        String word = only < 0 ? "" : given.get(only + 1);
        Path folder = Path.of(given.get(given.size() - 1));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        List<Line> lines = new ArrayList<>();
        for (Contest contest : Contests.all(full, patience)) {
            if (contest.figure().contains(word)) {
                lines.addAll(measured(contest, folder, new Stadium(err::println)));
            }
        }
        out.println("| figure | ours | baseline | ratio | goal | |\n|---|---|---|---|---|---|");
        lines.forEach(line -> out.println(line.markdown()));
        System.exit(lines.stream().allMatch(Line::met) ? 0 : 1);
    }

    /** Takes {@code --minutes N} out of what was given; without it, nothing ends early. */
    private static Duration minutes(List<String> given) {
        int at = given.indexOf("--minutes");
        if (at < 0) {
            return Duration.ofDays(1);
        }
        given.remove(at);
        return Duration.ofMinutes(Long.parseLong(given.remove(at)));
    }

    private static List<Line> measured(Contest contest, Path folder, Stadium stadium) throws Exception {
        Files.createDirectories(folder);
        Path own = Files.createTempDirectory(folder, "contest");
        try {
            return stadium.run(contest, own);
        } finally {
            Folders.delete(own);
        }
    }
}
