package wickbench.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.journal.JournalFolder;

/** A program that records until it is killed, and says of each entry when it was acknowledged. */
public final class Recorder {
    private static final int SEALED_EACH = 100;

    private Recorder() {}

    /** @param arguments the home's folder */
    public static void main(String[] arguments) throws IOException {
        PrintStream said = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        HomeFolder home = new HomeFolder(Path.of(arguments[0]));
        try (JournalFolder journal = JournalFolder.open(home, entries -> {})) {
            said.println("open");
            for (int number = 0; ; number++) {
                journal.append(List.of(Notes.draft(home.chance(), number)));
                said.println(journal.status().size());
                if (number % SEALED_EACH == 0) {
                    journal.checkpoint();
                }
            }
        }
    }

    /** Starts it in a process of its own. */
    static Process start(Path home) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx48m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Recorder.class.getName(),
                        home.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
