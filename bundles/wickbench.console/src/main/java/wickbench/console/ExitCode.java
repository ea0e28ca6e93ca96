package wickbench.console;

import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.words.Words;

/** How a call ends, and the one line that says why. */
final class ExitCode {
    static final int BAD_INPUT = 2;
    static final int REFUSED = 3;

    /** The program itself is broken (EX_SOFTWARE of sysexits.h). */
    static final int BROKEN = 70;

    /** A file that is wrong throughout is wrong in one way, mostly: more lines would only push the first off the screen. */
    private static final int MOST_LINES = 20;

    private static final Words WORDS = Words.of(ExitCode.class, "console");

    private ExitCode() {}

    /** Returns the code of a call that ended, and says why where it was not begun. */
    static int of(Ending ending, Streams to, boolean trace) {
        if (ending instanceof Ending.Held held) {
            return of(held.refusal(), to.err(), trace);
        }
        return ((Ending.Done) ending).code();
    }

    /** Says on standard error why the call ended, and returns its code. */
    static int of(Throwable failure, PrintStream err, boolean trace) {
        if (trace) {
            failure.printStackTrace(err);
        }
        if (failure instanceof CommandLine.ParameterException misuse) {
            err.println(Misuse.of(misuse));
            return BAD_INPUT;
        }
        if (failure instanceof BadInput) {
            tell(String.valueOf(failure.getMessage()), err);
            return BAD_INPUT;
        }
        if (failure instanceof Refusal) {
            err.println(failure.getMessage());
            return REFUSED;
        }
        err.println(WORDS.get(trace ? "broken.traced" : "broken", failure));
        return BROKEN;
    }

    private static void tell(String complaints, PrintStream err) {
        List<String> lines = complaints.lines().toList();
        lines.stream().limit(MOST_LINES).forEach(err::println);
        if (lines.size() > MOST_LINES) {
            err.println(WORDS.get("complaints.more", lines.size() - MOST_LINES));
        }
    }
}
