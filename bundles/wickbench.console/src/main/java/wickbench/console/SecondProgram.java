package wickbench.console;

import java.util.List;
import wickbench.api.words.Words;
import wickbench.console.door.Knock;
import wickbench.console.door.Reply;

/**
 * Runs a call here, or lets the program that holds the home run it.
 *
 * <p>The attempt is the question: a command that needs no home never asks who holds it. The holder may be just opening its door
 * or just ending, so an attempt that finds the home held and nobody to answer is made again for a while.
 */
final class SecondProgram {
    private static final int ATTEMPTS = 10;
    private static final long PAUSE_MILLIS = 150;

    private final Calls calls;
    private final Knock knock;
    private final Keyboard keyboard;
    private final Words words;

    SecondProgram(Calls calls, Knock knock, Keyboard keyboard, Words words) {
        this.calls = calls;
        this.knock = knock;
        this.keyboard = keyboard;
        this.words = words;
    }

    /** Returns the exit code; {@code arguments} are all of the call, for the holder to read again. */
    int run(GlobalOptions options, List<String> arguments, Calls.Caller caller) {
        Ending ending = calls.run(options, caller);
        for (int attempt = 1; ending instanceof Ending.Held && !calls.isAlone(options); attempt++) {
            keyboard.again();
            Reply reply = knock.command(arguments, caller.folder().toAbsolutePath());
            if (reply instanceof Reply.Ended ended) {
                return ended.code();
            }
            if (reply instanceof Reply.Lost) {
                caller.to().err().println(words.get("holder.lost"));
                return ExitCode.BROKEN;
            }
            if (attempt == ATTEMPTS || !Pause.of(PAUSE_MILLIS)) {
                break;
            }
            keyboard.again();
            ending = calls.run(options, caller);
        }
        return ExitCode.of(ending, caller.to(), options.trace());
    }
}
