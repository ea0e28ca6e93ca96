package wickbench.index;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;

/** A program that asks an index whose file finds no room, and once more when it is told that there is some. */
final class LimitedIndex {
    private LimitedIndex() {}

    /** @param args the home's folder, and {@code read} or {@code rebuild} */
    public static void main(String[] args) throws IOException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        try (TestHome home = TestHome.in(Path.of(args[0]))) {
            home.views(KilledIndex.view(1));
            try {
                ask(home.index(), args[1]);
                said.println("found room");
            } catch (Refusal e) {
                said.println(e.code() + " " + e.getMessage());
            }
            System.in.read();
            ask(home.index(), args[1]);
            said.println("rows "
                    + home.index()
                            .read(EntryIds.NAME, rows -> rows.read("select seq from entry", row -> row.whole("seq")))
                            .size());
            said.println("holds " + home.index().verify(Progress.NONE).holds());
        }
    }

    private static void ask(H2Index index, String how) {
        if (how.equals("rebuild")) {
            index.rebuild(Progress.NONE);
        } else {
            index.read("tallies", rows -> rows.read("select * from tally", row -> true));
        }
    }

    /** Starts it under a limit on the size of the files that it writes. */
    static Process start(Path home, String how, int kilobytes) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "prlimit",
                "--fsize=" + kilobytes * 1024 + ":unlimited",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                LimitedIndex.class.getName(),
                home.toString(),
                how));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
