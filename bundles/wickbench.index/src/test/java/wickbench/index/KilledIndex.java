package wickbench.index;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.index.IndexView;
import wickbench.api.progress.Progress;

/** A program that brings the index up to date, one view in a version of its own, until it is killed. */
final class KilledIndex {
    private KilledIndex() {}

    /** @param args the home's folder and the version of the view */
    public static void main(String[] args) throws IOException {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
        try (TestHome home = TestHome.in(Path.of(args[0]))) {
            home.views(view(Integer.parseInt(args[1])));
            said.println("open");
            home.index().catchUp(Progress.NONE);
            said.println("done");
            System.in.read();
        }
    }

    static IndexView view(int version) {
        return new Tallies("tallies", version, Optional.empty());
    }

    /** Starts it in a virtual machine of its own. */
    static Process start(Path home, int version) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledIndex.class.getName(),
                        home.toString(),
                        Integer.toString(version))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
