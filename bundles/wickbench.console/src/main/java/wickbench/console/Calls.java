package wickbench.console;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import org.osgi.framework.BundleContext;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.command.CommandSet;
import wickbench.api.words.Words;
import wickbench.console.door.Asking;

/** Runs calls of the command line, whoever makes them; each has its own terminal and its own command objects. */
final class Calls {
    private static final String HELD = "home.held";

    private final InstalledCommands commands;
    private final Words words;

    Calls(BundleContext context, Words words) {
        commands = new InstalledCommands(context);
        this.words = words;
    }

    /**
     * Who calls, and from where.
     *
     * @param folder where relative paths start
     * @param withoutCommand what to do when no command is named
     */
    record Caller(Streams to, Asking asking, Path folder, IntSupplier withoutCommand) {}

    /** Runs a call to its end, or until it finds the home held. */
    Ending run(GlobalOptions options, Caller caller) {
        List<Refusal> held = new ArrayList<>(1);
        int code;
        try {
            code = line(options, caller, failure -> {
                        if (isHeld(failure)) {
                            held.add((Refusal) failure);
                            return ExitCode.REFUSED;
                        }
                        return ExitCode.of(failure, caller.to().err(), options.trace());
                    })
                    .execute(options.rest().toArray(String[]::new));
        } catch (RuntimeException e) {
            code = ExitCode.of(e, caller.to().err(), options.trace());
        }
        return held.isEmpty() ? new Ending.Done(code) : new Ending.Held(held.get(0));
    }

    /** Tells whether the command called is one that only a program of its own can do. */
    boolean isAlone(GlobalOptions options) {
        return called(options).map(commands::isAlone).orElse(true);
    }

    private CommandLine line(GlobalOptions options, Caller caller, Wiring.Failed failed) {
        PlainTerminal terminal = new PlainTerminal(caller.to(), options, caller.asking(), words);
        CommandLine line = CommandWords.given(new Root(caller.withoutCommand()::getAsInt));
        for (String name : wanted(options)) {
            commands.find(name).map(set -> subcommand(set, terminal)).ifPresent(made -> line.addSubcommand(name, made));
        }
        return Wiring.of(line, caller.to(), caller.folder(), failed);
    }

    /** Returns the one command that is called, none where the desktop is meant, and all of them for help. */
    private List<String> wanted(GlobalOptions options) {
        if (options.rest().isEmpty()) {
            return List.of();
        }
        List<String> names = commands.names();
        Optional<String> called = called(options);
        called.filter(name -> !names.contains(name)).ifPresent(name -> {
            throw new BadInput(Complaint.of(name, words.get("command.unknown", String.join(", ", names))));
        });
        return called.map(List::of).orElse(names);
    }

    private static Optional<String> called(GlobalOptions options) {
        return options.rest().stream().findFirst().filter(first -> !first.startsWith("-"));
    }

    private static boolean isHeld(Throwable failure) {
        return failure instanceof Refusal refusal && refusal.code().equals(HELD);
    }

    private static CommandLine subcommand(CommandSet set, PlainTerminal terminal) {
        return CommandWords.given(set.commands(terminal));
    }
}
