package wickbench.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Starts recorders, each in a process of its own.
 *
 * <p>The first one leaves an archive of the classes that it loaded; those that take it up start in two thirds of the time.
 */
final class Recorders {
    /** After so many lines a recorder has loaded what it needs. */
    private static final int LINES = 100;

    private final Path classes;

    private Recorders(Path classes) {
        this.classes = classes;
    }

    /** @param folder where the archive is kept and the first one records */
    static Recorders ready(Path folder) throws IOException, InterruptedException {
        Path classes = folder.resolve("classes.jsa");
        Process first =
                start(folder.resolve("first"), List.of(Recorder.INDEXED), "-XX:ArchiveClassesAtExit=" + classes);
        try (BufferedReader said = first.inputReader(StandardCharsets.UTF_8)) {
            for (int line = 0; line < LINES; line++) {
                said.readLine();
            }
            // asked to end, unlike all that follow: the archive is written at the end
            first.toHandle().destroy();
            said.lines().forEach(line -> {});
            first.waitFor();
        }
        return new Recorders(classes);
    }

    Process start(Path home, boolean indexed) throws IOException {
        List<String> more = indexed ? List.of(Recorder.INDEXED) : List.of();
        return Files.exists(classes)
                ? start(home, more, "-XX:SharedArchiveFile=" + classes)
                : start(home, more, "-Xshare:auto");
    }

    private static Process start(Path home, List<String> more, String shared) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                shared,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Xmx48m",
                "-cp",
                System.getProperty("java.class.path"),
                Recorder.class.getName(),
                home.toString()));
        command.addAll(more);
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
