package wickbench.people;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.Person;
import wickbench.api.person.Role;

/** Lists people with their roles. */
record PeoplePrint(Terminal terminal) {
    void show(List<Person> shown) {
        if (terminal.json()) {
            terminal.json(Json.array(shown.stream().map(PeoplePrint::json).toList()));
        } else if (shown.isEmpty()) {
            terminal.line(PeopleWords.get("people.nobody"));
        } else {
            terminal.table(
                    List.of(
                            PeopleWords.get("people.id"),
                            PeopleWords.get("people.name-column"),
                            PeopleWords.get("people.roles")),
                    shown.stream().map(this::row).toList());
        }
    }

    private List<String> row(Person person) {
        String roles = codes(person).stream()
                .map(code -> PeopleWords.get("role." + code))
                .collect(Collectors.joining(", "));
        return List.of(person.id().value(), person.name().orElseGet(() -> PeopleWords.get("people.nameless")), roles);
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
