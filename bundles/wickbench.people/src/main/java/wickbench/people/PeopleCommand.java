package wickbench.people;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;
import wickbench.api.words.Words;

/** Enrolling people, giving them roles, and who there is. */
@Command(name = "people", synopsisSubcommandLabel = "COMMAND")
final class PeopleCommand {
    private final People people;
    private final Terminal terminal;
    private final Words words = Words.of(PeopleCommand.class, "people");

    PeopleCommand(People people, Terminal terminal) {
        this.people = people;
        this.terminal = terminal;
    }

    @Command(name = "add")
    int add(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--name", required = true, paramLabel = "NAME") String name,
            @Option(names = "--role", required = true, split = ",", paramLabel = "ROLE") List<String> roles) {
        Person added = people.enrol(id, name, roles(roles), terminal.actorOrRefuse());
        show(List.of(added));
        return 0;
    }

    @Command(name = "assign")
    int assign(
            @Parameters(paramLabel = "ID") PersonId id,
            @Option(names = "--role", required = true, split = ",", paramLabel = "ROLE") List<String> roles) {
        show(List.of(people.assign(id, roles(roles), terminal.actorOrRefuse())));
        return 0;
    }

    @Command(name = "list")
    int list() {
        show(people.all());
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

    private void show(List<Person> shown) {
        if (terminal.json()) {
            terminal.json(Json.array(shown.stream().map(PeopleCommand::json).toList()));
        } else if (shown.isEmpty()) {
            terminal.line(words.get("people.nobody"));
        } else {
            terminal.table(
                    List.of(words.get("people.id"), words.get("people.name-column"), words.get("people.roles")),
                    shown.stream().map(this::row).toList());
        }
    }

    private List<String> row(Person person) {
        String roles =
                codes(person).stream().map(code -> words.get("role." + code)).collect(Collectors.joining(", "));
        return List.of(person.id().value(), person.name().orElseGet(() -> words.get("people.nameless")), roles);
    }

    private static Json.Obj json(Person person) {
        return Json.object()
                .with("id", person.id().value())
                .withText("name", person.name())
                .with("roles", Json.texts(codes(person)));
    }

    private static List<String> codes(Person person) {
        return new TreeSet<>(person.roles()).stream().map(Role::code).toList();
    }
}
