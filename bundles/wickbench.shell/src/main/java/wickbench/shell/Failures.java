package wickbench.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;

/** What went wrong, in words for people. */
final class Failures {
    private Failures() {}

    /** Returns a refusal's or a complaint's own words; for anything else, what broke and how. */
    static String plain(Throwable failure) {
        if (failure instanceof Refusal || failure instanceof BadInput) {
            return failure.getMessage();
        }
        String kind = failure.getClass().getSimpleName();
        return ShellWords.get(
                "failure.broken", failure.getMessage() == null ? kind : kind + ": " + failure.getMessage());
    }

    /** Returns everything that is known, to be sent to those who can mend it. */
    static String details(Throwable failure) {
        StringWriter text = new StringWriter();
        failure.printStackTrace(new PrintWriter(text));
        return text.toString();
    }
}
