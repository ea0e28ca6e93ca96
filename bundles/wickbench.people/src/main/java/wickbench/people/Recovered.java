package wickbench.people;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * The body of {@code person.recovered}: a new administrator where the last one was lost.
 *
 * @param checkpoint signed with the station's key just before, which shows that the station itself was at hand
 * @param code the entry that sealed the code by which it was done
 * @param watchedBy a witness who has no passphrase to sign with
 */
record Recovered(
        PersonId person,
        Hash file,
        String reason,
        String checkpoint,
        Optional<EntryRef> code,
        Optional<PersonId> watchedBy) {
    static final String KIND = "person.recovered";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object()
                .with("person", person.value())
                .with("file", file.hex())
                .with("reason", reason)
                .with("checkpoint", checkpoint)
                .withText("code", code.map(EntryRef::toString))
                .withText("watched_by", watchedBy.map(PersonId::value));
    }

    static Checked<Recovered> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = Enrolled.needed(fields, "person", PersonId::new);
        Optional<Hash> file = Enrolled.needed(fields, "file", Hash::new);
        String reason = fields.text("reason");
        String checkpoint = fields.text("checkpoint");
        Optional<EntryRef> code = fields.optional("code", EntryRef::parse);
        Optional<PersonId> watchedBy = fields.optional("watched_by", PersonId::new);
        Enrolled.passSignatures(fields);
        return fields.finish(
                () -> new Recovered(person.orElseThrow(), file.orElseThrow(), reason, checkpoint, code, watchedBy));
    }
}
