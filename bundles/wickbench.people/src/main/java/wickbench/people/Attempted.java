package wickbench.people;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * The body of {@code person.sign-in-failed}, and of {@code person.signed-in} after failures.
 *
 * @param person empty when nobody has the id that was given
 * @param shown what was shown: {@code passphrase} or {@code pin}
 * @param failures wrong ones in a row up to now
 * @param turnedAway how many more were turned away unheard since the entry before, as far as this program has seen
 */
record Attempted(Optional<PersonId> person, String shown, int failures, long turnedAway) {
    static final String FAILED = "person.sign-in-failed";
    static final String GOOD = "person.signed-in";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object()
                .withText("person", person.map(PersonId::value))
                .with("shown", shown)
                .with("failures", failures)
                .with("turned_away", turnedAway);
    }

    static Checked<Attempted> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = fields.optional("person", PersonId::new);
        String shown = fields.text("shown");
        long failures = fields.whole("failures");
        long turnedAway = fields.whole("turned_away");
        return fields.finish(() -> new Attempted(person, shown, Math.toIntExact(failures), turnedAway));
    }
}
