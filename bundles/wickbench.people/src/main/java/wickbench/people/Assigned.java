package wickbench.people;

import java.util.Optional;
import java.util.Set;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;

/**
 * The body of {@code person.assigned}; the schema is {@code docs/formats/person.assigned-1.schema.json}.
 *
 * @param roles all that the person has from now on
 */
record Assigned(PersonId person, Set<Role> roles) {
    static final String KIND = "person.assigned";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object().with("person", person.value()).with("roles", Enrolled.codes(roles));
    }

    static Checked<Assigned> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = Enrolled.needed(fields, "person", PersonId::new);
        Set<Role> roles = Enrolled.roles(fields);
        Enrolled.passSignatures(fields);
        return fields.finish(() -> new Assigned(person.orElseThrow(), roles));
    }
}
