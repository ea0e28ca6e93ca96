package wickbench.console;

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
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Desktop;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.words.Words;

/**
 * What the launcher calls with the arguments of the program.
 *
 * <p>Registering the home wakes everything that keeps something in it, so the commands are looked up after that.
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
        try {
            options = GlobalOptions.of(arguments);
        } catch (CommandLine.ParameterException e) {
            return ExitCode.of(e, to.err(), false);
        }
        ServiceRegistration<Home> home = context.registerService(Home.class, new HomeFolder(options.home()), null);
        try {
            return call(options, to);
        } finally {
            home.unregister();
        }
    }

    private int call(GlobalOptions options, Streams to) {
        try {
            return line(options, to).execute(options.rest().toArray(String[]::new));
        } catch (RuntimeException e) {
            return ExitCode.of(e, to.err(), options.trace());
        }
    }

    private CommandLine line(GlobalOptions options, Streams to) {
        InstalledCommands commands = new InstalledCommands(context);
        PlainTerminal terminal = new PlainTerminal(to, options.json(), options.actor(), words);
        CommandLine line = CommandWords.given(new Root(() -> openDesktop(options, to)));
        for (String name : wanted(options.rest(), commands)) {
            commands.find(name).map(set -> subcommand(set, terminal)).ifPresent(made -> line.addSubcommand(name, made));
        }
        return Wiring.of(line, to, options.trace());
    }

    /** Returns the one command that is called, or all of them when none is, as for help. */
    private List<String> wanted(List<String> rest, InstalledCommands commands) {
        List<String> names = commands.names();
        Optional<String> called = rest.stream().findFirst().filter(first -> !first.startsWith("-"));
        called.filter(name -> !names.contains(name)).ifPresent(name -> {
            throw new BadInput(Complaint.of(name, words.get("command.unknown", String.join(", ", names))));
        });
        return called.map(List::of).orElse(names);
    }

    private static CommandLine subcommand(CommandSet set, PlainTerminal terminal) {
        return CommandWords.given(set.commands(terminal));
    }

    private int openDesktop(GlobalOptions options, Streams to) {
        Optional<Desktop> desktop =
                Optional.ofNullable(context.getServiceReference(Desktop.class)).map(context::getService);
        if (desktop.isEmpty()) {
            to.err().println(words.get("desktop.absent"));
            return ExitCode.BAD_INPUT;
        }
        return desktop.get().open(Optional.empty());
    }
}
