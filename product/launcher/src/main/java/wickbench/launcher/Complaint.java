package wickbench.launcher;

import java.util.List;
import java.util.stream.Stream;

/** A warning or an error of the framework or of a bundle, told on standard error in one line. */
final class Complaint {

    private Complaint() {}

    /** {@code cause} may be null; its whole trace is told only when the start is traced. */
    static void tell(String who, String message, Throwable cause) {
        System.err.println(line(who, message, cause));
        if (cause != null && Phases.isTraced()) {
            cause.printStackTrace();
        }
    }

    static String line(String who, String message, Throwable cause) {
        return "wickbench: " + who + ": " + oneLine(message)
                + (cause == null ? "" : " (" + oneLine(root(cause).toString()) + ")");
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static Throwable root(Throwable cause) {
        List<Throwable> chain =
                Stream.iterate(cause, each -> each != null, Throwable::getCause).toList();
        return chain.get(chain.size() - 1);
    }
}
