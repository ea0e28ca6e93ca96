package wickbench.people;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * The body of {@code person.passphrase-set}, {@code person.pin-set} and {@code person.badge-set}: a new file stands for a person.
 *
 * @param once whether the passphrase was set by others and is good for setting one's own only
 */
record FileChanged(PersonId person, Hash file, boolean once) {
    static final String PASSPHRASE = "person.passphrase-set";
    static final String PIN = "person.pin-set";
    static final String BADGE = "person.badge-set";
    static final int VERSION = 1;

    Json.Obj body() {
        Json.Obj body = Json.object().with("person", person.value()).with("file", file.hex());
        return once ? body.with("once", true) : body;
    }

    static Checked<FileChanged> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = Enrolled.needed(fields, "person", PersonId::new);
        Optional<Hash> file = Enrolled.needed(fields, "file", Hash::new);
        boolean once = fields.has("once") && fields.flag("once");
        Enrolled.passSignatures(fields);
        return fields.finish(() -> new FileChanged(person.orElseThrow(), file.orElseThrow(), once));
    }
}
