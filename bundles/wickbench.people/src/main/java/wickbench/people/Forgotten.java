package wickbench.people;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/** The body of {@code person.forgotten}: the files of a person are removed, here and wherever they come back. */
record Forgotten(PersonId person) {
    static final String KIND = "person.forgotten";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object().with("person", person.value());
    }

    static Checked<Forgotten> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = Enrolled.needed(fields, "person", PersonId::new);
        Enrolled.passSignatures(fields);
        return fields.finish(() -> new Forgotten(person.orElseThrow()));
    }
}
