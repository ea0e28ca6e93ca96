package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Recovery;
import wickbench.api.authority.Recovery.Witness;
import wickbench.api.authority.SignIn;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/** Enrolling people, giving them roles, what they show to be known again, and forgetting them. */
@Command(name = "people", synopsisSubcommandLabel = "COMMAND")
final class PeopleCommand {
    private final People people;
    private final SignIn signIn;
    private final Credentials credentials;
    private final Terminal terminal;
    private final Recovery recovery;
    private final Prompts prompts;
    private final PeoplePrint print;

    PeopleCommand(People people, SignIn signIn, Credentials credentials, Recovery recovery, Terminal terminal) {
        this.people = people;
        this.signIn = signIn;
        this.credentials = credentials;
        this.recovery = recovery;
        this.terminal = terminal;
        prompts = new Prompts(terminal, signIn);
        print = new PeoplePrint(terminal);
    }

    @Command(name = "add")
    int add(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--name", required = true, paramLabel = "NAME") String name,
            @Option(names = "--role", required = true, split = ",", paramLabel = "ROLE") List<String> roles) {
        Set<Role> given = roles(roles);
        print.show(List.of(people.enrol(id, name, given, prompts.provenActor())));
        return 0;
    }

    @Command(name = "role")
    int role(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--role", required = true, split = ",", paramLabel = "ROLE") List<String> roles) {
        Set<Role> given = roles(roles);
        print.show(List.of(people.assign(id, given, prompts.provenActor())));
        return 0;
    }

    @Command(name = "list")
    int list() {
        List<Person> all = people.all();
        print.show(all);
        if (!terminal.json() && !all.isEmpty() && !signIn.asked()) {
            terminal.note(PeopleWords.get("people.open"));
        }
        return 0;
    }

    @Command(name = "passphrase")
    int passphrase() {
        PersonId who = terminal.actorOrRefuse();
        Optional<Passphrase> now = prompts.now(who);
        credentials.set(who, now, prompts.fresh("ask.fresh", who));
        terminal.note(PeopleWords.get("people.passphrase-kept", who));
        if (now.isEmpty()) {
            terminal.note(PeopleWords.get("people.unsealed", who));
        }
        return 0;
    }

    @Command(name = "reset")
    int reset(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--witness", paramLabel = "PERSON") PersonId witness) {
        Signing by = prompts.signing(terminal.actorOrRefuse());
        Optional<Signing> second = Optional.ofNullable(witness).map(prompts::signing);
        credentials.reset(id, prompts.fresh("ask.once", id), by, second);
        terminal.note(PeopleWords.get("people.once-kept", id));
        return 0;
    }

    @Command(name = "recover")
    int recover(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--witness", paramLabel = "PERSON") PersonId witness,
            @Option(names = "--code") boolean code,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        if (code) {
            byCode(id, Optional.ofNullable(witness), reason);
        } else {
            byWitness(id, Optional.ofNullable(witness), reason);
        }
        terminal.note(PeopleWords.get("people.recovered", id));
        terminal.note(PeopleWords.get("people.once-kept", id));
        return 0;
    }

    private void byWitness(PersonId id, Optional<PersonId> witness, String reason) {
        PersonId who =
                witness.orElseThrow(() -> new BadInput(Complaint.of("--witness", PeopleWords.get("recover.how"))));
        Signing second = prompts.signing(who);
        recovery.byWitness(id, prompts.fresh("ask.once", id), second, reason);
    }

    private void byCode(PersonId id, Optional<PersonId> witness, String reason) {
        Passphrase code = prompts.code();
        Optional<Witness> second = witness.map(who -> new Witness(who, prompts.held(who)));
        recovery.byCode(id, prompts.fresh("ask.once", id), code, second, reason);
    }

    @Command(name = "envelope")
    int envelope() {
        String code = recovery.seal(prompts.signing(terminal.actorOrRefuse()));
        if (terminal.json()) {
            terminal.json(Json.object().with("code", code));
        } else {
            terminal.line(code);
            terminal.note(PeopleWords.get("people.sealed"));
        }
        return 0;
    }

    @Command(name = "pin")
    int pin(@Parameters(paramLabel = "ID") PersonId id) {
        PersonId by = prompts.provenActor();
        credentials.pin(id, prompts.fresh("ask.pin", id), by);
        terminal.note(PeopleWords.get("people.pin-kept", id));
        return 0;
    }

    @Command(name = "badge")
    int badge(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--says", required = true, paramLabel = "TEXT") String says) {
        credentials.badge(id, says, prompts.provenActor());
        terminal.note(PeopleWords.get("people.badge-kept", id));
        return 0;
    }

    @Command(name = "forget")
    int forget(@Parameters(paramLabel = "ID") PersonId id) {
        PersonId by = terminal.actorOrRefuse();
        credentials.forget(id, by, prompts.signature(by));
        terminal.note(PeopleWords.get("people.forgotten", id));
        return 0;
    }

    private static Set<Role> roles(List<String> codes) {
        Set<Role> roles = new TreeSet<>();
        for (String code : codes) {
            try {
                roles.add(Coded.of(Role.class, code.strip()));
            } catch (IllegalArgumentException e) {
                throw new BadInput(Complaint.of("--role", e.getMessage()));
            }
        }
        return roles;
    }
}
