package wickbench.journal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** A program that records until it is killed and says of each entry when it was acknowledged. */
final class KilledRecorder {
    private KilledRecorder() {}

    /** @param args the home's folder and {@code record}, or {@code hold} to only hold it */
    public static void main(String[] args) throws IOException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        try (JournalFolder journal = Recorded.open(Path.of(args[0]))) {
            said.println("open");
            for (int n = 0; args[1].equals("record"); n++) {
                journal.append(List.of(Recorded.note(n), Recorded.note(n)));
                said.println(journal.size(Recorded.STATION));
            }
            System.in.read();
        }
    }

    /** Starts it in a virtual machine of its own. */
    static Process start(Path home, String what) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledRecorder.class.getName(),
                        home.toString(),
                        what)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
