package wickbench.console;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceRegistration;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.command.Desktop;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;
import wickbench.console.door.Knock;

/**
 * What the launcher calls with the arguments of the program.
 *
 * <p>Registering the home wakes everything that keeps something in it, so the commands are looked up after that, and the language is
 * decided before.
 */
@Component(service = ToIntFunction.class, property = "wickbench.application=main")
public final class FrontDoor implements ToIntFunction<String[]> {
    private final BundleContext context;
    private final Words words = Words.of(FrontDoor.class, "console");
    private final Supplier<Streams> streams;

    @Activate
    public FrontDoor(BundleContext context) {
        this(context, Streams::ofProcess);
    }

    FrontDoor(BundleContext context, Supplier<Streams> streams) {
        this.context = context;
        this.streams = streams;
    }

    @Override
    public int applyAsInt(String[] arguments) {
        Streams to = streams.get();
        GlobalOptions options;
        SpokenLanguage language;
        try {
            options = GlobalOptions.of(arguments);
            language = new SpokenLanguage(options.language(), options.home(), words);
        } catch (CommandLine.ParameterException | BadInput e) {
            return ExitCode.of(e, to.err(), false);
        }
        Home folder = new HomeFolder(options.home());
        ServiceRegistration<Home> home = context.registerService(Home.class, folder, null);
        Calls calls = new Calls(context, words);
        Attendance attendance = Attendance.begin(context, calls, words);
        try {
            Keyboard keyboard = options.keyboard(to.in());
            Knock knock = new Knock(folder.folder(), to.out(), to.err(), keyboard);
            Calls.Caller caller =
                    new Calls.Caller(to, keyboard, Path.of(""), () -> openDesktop(to, knock, options.named()));
            return new SecondProgram(calls, knock, keyboard, words).run(options, List.of(arguments), caller);
        } finally {
            // before the home goes, so that callers who are inside get their answers
            attendance.close();
            home.unregister();
            language.close();
        }
    }

    private int openDesktop(Streams to, Knock knock, Optional<PersonId> actor) {
        Optional<Desktop> desktop =
                Optional.ofNullable(context.getServiceReference(Desktop.class)).map(context::getService);
        if (desktop.isEmpty()) {
            to.err().println(words.get("desktop.absent"));
            return ExitCode.BAD_INPUT;
        }
        return new DesktopStart(desktop.get(), knock).run(actor);
    }
}
