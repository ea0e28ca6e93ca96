package wickbench.journal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program that records until it is killed and says of each entry when it was acknowledged. */
final class KilledRecorder {
    private KilledRecorder() {}

    /** @param args the home's folder and {@code record}, or {@code hold} to only hold it */
    public static void main(String[] args) throws IOException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        try (JournalFolder journal = Recorded.open(Path.of(args[0]))) {
            said.println("open");
            for (int n = (int) journal.size(Recorded.STATION); args[1].equals("record"); n += 2) {
                journal.append(Recorded.notes(n, 2));
                said.println(journal.size(Recorded.STATION));
                if (n % 64 < 2) {
                    journal.checkpoint();
                }
            }
            System.in.read();
        }
    }

    /** Starts it in a virtual machine of its own. */
    static Process start(Path home, String what) throws IOException {
        return new ProcessBuilder(java(KilledRecorder.class, home.toString(), what))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Returns the command that runs a program of these tests, quick to start. */
    static List<String> java(Class<?> program, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx48m",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(List.of(arguments));
        return command;
    }
}
