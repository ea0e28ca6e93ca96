package wickbench.benchmarks;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** R, started once and asked lap by lap; it times itself, so neither its start nor the way to it counts. */
final class Statistics implements Contestant {
    private static final String NAME = "R";
    private static final String COMMAND = "Rscript";

    private final Process process;
    private final BufferedWriter asked;
    private final BufferedReader answered;

    private Statistics(Process process) {
        this.process = process;
        asked = process.outputWriter(StandardCharsets.UTF_8);
        answered = process.inputReader(StandardCharsets.UTF_8);
    }

    /**
     * Starts R, or where it is not installed, returns one who says so.
     *
     * @param ready what is done once, before the laps
     * @param work what is done {@code count} times in a lap, all in all
     */
    static Contestant run(Path folder, String ready, String work, int count) throws IOException {
        if (!isInstalled()) {
            return new Absent();
        }
        String script = String.join(
                "\n",
                ready,
                "con <- file('stdin'); open(con)",
                "while (length(readLines(con, 1)) > 0) {",
                "  spent <- system.time({ " + work + " })[['elapsed']]",
                "  cat(" + count + " / spent, '\\n'); flush(stdout())",
                "}");
        Path file = Files.writeString(folder.resolve("laps.R"), script);
        return new Statistics(new ProcessBuilder(COMMAND, file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    private static boolean isInstalled() {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, COMMAND)));
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public double lap() throws Exception {
        asked.write("lap\n");
        asked.flush();
        String answer = answered.readLine();
        if (answer == null) {
            throw new IOException("R ended before its lap");
        }
        return Double.parseDouble(answer.strip());
    }

    @Override
    public void close() throws Exception {
        asked.close();
        process.waitFor();
    }

    /** Stands in the table for R where it is not installed; nothing is measured then. */
    private record Absent() implements Contestant {
        @Override
        public String name() {
            return NAME + " (not installed)";
        }

        @Override
        public double lap() {
            return Double.NaN;
        }
    }
}
