package wickbench.console;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Unmatched;
import wickbench.api.person.PersonId;

/** The options that hold for every command; they may stand before or after its name. */
final class GlobalOptions {

    @Option(names = "--home", paramLabel = "DIR")
    private Path home;

    @Option(names = "--as", paramLabel = "PERSON")
    private PersonId actor;

    @Option(names = "--language", paramLabel = "CODE")
    private String language;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--trace")
    private boolean trace;

    @Option(names = "--passphrase-stdin")
    private boolean passphraseStdin;

    @Unmatched
    private List<String> rest;

    /** Takes the global options out of the arguments; what remains is for the command. */
    static GlobalOptions of(String... arguments) {
        GlobalOptions options = new GlobalOptions();
        new CommandLine(options)
                .registerConverter(PersonId.class, PersonId::new)
                .setExpandAtFiles(false)
                .parseArgs(arguments);
        return options;
    }

    Path home() {
        return home == null ? DefaultFolder.ofThisSystem() : home;
    }

    /** Returns the person named, if one was. */
    Optional<PersonId> named() {
        return Optional.ofNullable(actor);
    }

    /** Returns who acts: the person named, or the account that runs the program. */
    Optional<PersonId> actor() {
        return named().or(() -> SystemAccount.person(System.getProperty("user.name")));
    }

    /** Returns the code of the language asked for, if one was. */
    Optional<String> language() {
        return Optional.ofNullable(language);
    }

    boolean json() {
        return json;
    }

    /** Returns who asks for a passphrase: the terminal, or standard input where that was wanted. */
    Keyboard keyboard(InputStream in) {
        return passphraseStdin ? Keyboard.lines(in) : Keyboard.terminal();
    }

    boolean trace() {
        return trace;
    }

    /** Returns what is left for the command; {@code help plant} is another way to write {@code plant --help}. */
    List<String> rest() {
        List<String> left = rest == null ? List.of() : rest;
        return left.stream().findFirst().filter("help"::equals).isPresent() ? helped(left) : left;
    }

    private static List<String> helped(List<String> asked) {
        return Stream.concat(asked.stream().skip(1), Stream.of("--help")).toList();
    }
}
