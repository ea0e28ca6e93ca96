package wickbench.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs programs beside this one. */
public final class Programs {
    private Programs() {}

    /** Returns what a program says, on either stream. */
    public static String run(List<String> command, int seconds) throws IOException, InterruptedException {
        Path out = Files.createTempFile("program", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        boolean ended = process.waitFor(seconds, TimeUnit.SECONDS);
        String said = Files.readString(out);
        Files.delete(out);
        if (!ended || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IllegalStateException(command + (ended ? " failed: " : " did not end: ") + said);
        }
        return said;
    }
}
