package wickbench.people;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * What is known of a person and can be forgotten; the schema is {@code docs/formats/person-name.schema.json}.
 *
 * @param passphrase Argon2id, as text
 * @param pin Argon2id, as text
 * @param badge {@code SALT$HASH}: looked up among all people at each scan, so not a hash that is dear
 */
record PersonFile(String name, Optional<String> passphrase, Optional<String> pin, Optional<String> badge) {

    static PersonFile named(String name) {
        return new PersonFile(name, Optional.empty(), Optional.empty(), Optional.empty());
    }

    PersonFile withPassphrase(String hash) {
        return new PersonFile(name, Optional.of(hash), pin, badge);
    }

    PersonFile withPin(String hash) {
        return new PersonFile(name, passphrase, Optional.of(hash), badge);
    }

    /** Returns this with the hash of what a badge says. */
    PersonFile withBadge(String said, String salt) {
        return new PersonFile(name, passphrase, pin, Optional.of(salt + "$" + badgeHash(said, salt)));
    }

    /** Tells whether this person's badge says so. */
    boolean wears(String said) {
        return badge.filter(kept -> {
                    String salt = kept.substring(0, kept.indexOf('$'));
                    return kept.equals(salt + "$" + badgeHash(said, salt));
                })
                .isPresent();
    }

    Json.Obj json(String salt) {
        return Json.object()
                .with("name", name)
                .withText("passphrase", passphrase)
                .withText("pin", pin)
                .withText("badge", badge)
                .with("salt", salt);
    }

    static Checked<PersonFile> read(String source, String text) {
        return JsonReader.readObject(source, text).then(object -> {
            Fields fields = Fields.of(source, object);
            String name = fields.text("name");
            Optional<String> passphrase = fields.optionalText("passphrase");
            Optional<String> pin = fields.optionalText("pin");
            Optional<String> badge = fields.optionalText("badge");
            fields.text("salt");
            return fields.finish(() -> new PersonFile(name, passphrase, pin, badge));
        });
    }

    private static String badgeHash(String said, String salt) {
        return Hash.ofContent(salt + said.strip()).hex();
    }

    /** Says nothing of what it holds, so that no log does. */
    @Override
    public String toString() {
        return "person file";
    }
}
