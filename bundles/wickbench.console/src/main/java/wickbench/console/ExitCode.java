package wickbench.console;

import java.io.PrintStream;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;

/** How a call ends, and the one line that says why. */
final class ExitCode {
    static final int BAD_INPUT = 2;
    static final int REFUSED = 3;

    /** The program itself is broken (EX_SOFTWARE of sysexits.h). */
    static final int BROKEN = 70;

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
        if (failure instanceof BadInput || failure instanceof CommandLine.ParameterException) {
            err.println(failure.getMessage());
            return BAD_INPUT;
        }
        if (failure instanceof Refusal) {
            err.println(failure.getMessage());
            return REFUSED;
        }
        err.println("broken: " + failure + (trace ? "" : " (--trace shows where)"));
        return BROKEN;
    }
}
