package wickbench.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.util.tracker.ServiceTracker;
import picocli.CommandLine;
import wickbench.api.authority.SignIn;
import wickbench.api.check.Refusal;
import wickbench.api.command.Desktop;
import wickbench.api.home.HeldHome;
import wickbench.api.words.Words;
import wickbench.console.door.Answering;
import wickbench.console.door.Asking;
import wickbench.console.door.Door;

/** Answers other programs for as long as this one holds its home. */
final class Attendance extends ServiceTracker<HeldHome, Optional<Door>> implements Answering {
    private final Calls calls;
    private final Words words;

    private Attendance(BundleContext context, Calls calls, Words words) {
        super(context, HeldHome.class, null);
        this.calls = calls;
        this.words = words;
    }

    /** Begins; the door opens at the moment the home is taken. */
    static Attendance begin(BundleContext context, Calls calls, Words words) {
        Attendance attendance = new Attendance(context, calls, words);
        attendance.open();
        return attendance;
    }

    /** Opens the door; where that cannot be, other programs hear who holds the home, as they would without it. */
    @Override
    public Optional<Door> addingService(ServiceReference<HeldHome> held) {
        Path home = context.getService(held).folder();
        try {
            return Optional.of(Door.open(home, this));
        } catch (IOException | UnsupportedOperationException noDoor) {
            return Optional.empty();
        }
    }

    @Override
    public void removedService(ServiceReference<HeldHome> held, Optional<Door> door) {
        door.ifPresent(Attendance::close);
        context.ungetService(held);
    }

    private static void close(Door door) {
        try {
            door.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public int command(List<String> arguments, Path folder, PrintStream out, PrintStream err, Asking asking) {
        IntSupplier call =
                () -> answer(arguments, folder, new Streams(InputStream.nullInputStream(), out, err), asking);
        return Optional.ofNullable(context.getServiceReference(SignIn.class))
                .map(context::getService)
                .map(signIn -> signIn.apart(call))
                .orElseGet(call::getAsInt);
    }

    private int answer(List<String> arguments, Path folder, Streams to, Asking asking) {
        try {
            GlobalOptions options = GlobalOptions.of(arguments.toArray(String[]::new));
            Ending ending = calls.isAlone(options)
                    ? new Ending.Held(new Refusal("command.alone", words.get("command.alone")))
                    : calls.run(options, new Calls.Caller(to, asking, folder, () -> ExitCode.BAD_INPUT));
            return ExitCode.of(ending, to, options.trace());
        } catch (CommandLine.ParameterException e) {
            return ExitCode.of(e, to.err(), false);
        }
    }

    @Override
    public boolean comeForward() {
        return Optional.ofNullable(context.getServiceReference(Desktop.class))
                .map(context::getService)
                .map(Desktop::comeForward)
                .orElse(false);
    }
}
