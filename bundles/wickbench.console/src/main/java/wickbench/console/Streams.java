package wickbench.console;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Standard input, output and error of one call.
 *
 * <p>Always UTF-8: a result says µg, and a machine whose locale is C would print a question mark.
 */
record Streams(InputStream in, PrintStream out, PrintStream err) {

    static Streams ofProcess() {
        return new Streams(new FileInputStream(FileDescriptor.in), utf8(FileDescriptor.out), utf8(FileDescriptor.err));
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
