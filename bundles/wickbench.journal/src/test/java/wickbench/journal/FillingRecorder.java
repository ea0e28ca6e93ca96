package wickbench.journal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;

/** A program that records until the disk refuses, waits until it is told that there is space again, and goes on. */
final class FillingRecorder {
    private static final int AFTER = 20;

    private FillingRecorder() {}

    /** @param args the home's folder; says of each turn what was acknowledged and why no more was */
    public static void main(String[] args) throws IOException {
        fill(Path.of(args[0]), new PrintStream(new FileOutputStream(FileDescriptor.out), true), System.in);
    }

    static void fill(Path home, PrintStream said, InputStream freed) throws IOException {
        try (JournalFolder journal = Recorded.open(home)) {
            said.println("full " + untilRefused(journal));
            said.println("kept " + journal.size(Recorded.STATION));
            freed.read();
            for (int n = 0; n < AFTER; n++) {
                journal.append(Recorded.notes(500_000 + n, 1));
            }
            journal.checkpoint();
            said.println("kept " + journal.size(Recorded.STATION));
            said.println("findings " + journal.verify(Progress.NONE).findings());
        }
    }

    /** Records, with a checkpoint now and then, until one append is refused; returns why. */
    private static String untilRefused(JournalFolder journal) {
        for (int n = 0; ; n++) {
            long before = journal.size(Recorded.STATION);
            try {
                journal.append(n % 7 == 0 ? Recorded.notes(10 * n, 9) : List.of(Recorded.note(10 * n)));
            } catch (Refusal e) {
                if (journal.size(Recorded.STATION) != before) {
                    throw new IllegalStateException("kept what was refused", e);
                }
                return e.code() + " " + e.getMessage();
            }
        }
    }
}
