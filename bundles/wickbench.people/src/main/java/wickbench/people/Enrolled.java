package wickbench.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.words.Coded;

/**
 * The body of {@code person.enrolled}; the schema is {@code docs/formats/person.enrolled-1.schema.json}.
 *
 * @param file the SHA-256 of the file with the name, which is also its name
 */
record Enrolled(PersonId person, Set<Role> roles, Hash file) {
    static final String KIND = "person.enrolled";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object()
                .with("person", person.value())
                .with("roles", codes(roles))
                .with("file", file.hex());
    }

    static Checked<Enrolled> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<PersonId> person = needed(fields, "person", PersonId::new);
        Optional<Hash> file = needed(fields, "file", Hash::new);
        Set<Role> roles = roles(fields);
        passSignatures(fields);
        return fields.finish(() -> new Enrolled(person.orElseThrow(), roles, file.orElseThrow()));
    }

    /** Passes over what {@link wickbench.api.authority.Signature} reads for itself. */
    static void passSignatures(Fields fields) {
        fields.has(Signature.MEMBER);
        fields.has(Signature.WITNESS);
    }

    static <T> Optional<T> needed(Fields fields, String name, Function<String, T> parse) {
        fields.text(name);
        return fields.optional(name, parse);
    }

    /** Returns the roles as codes in a fixed order, so that equal roles are equal bytes. */
    static Json.Arr codes(Set<Role> roles) {
        return Json.texts(new TreeSet<>(roles).stream().map(Role::code).toList());
    }

    static Set<Role> roles(Fields fields) {
        List<String> codes = fields.texts("roles");
        Set<Role> roles = new TreeSet<>();
        for (String code : codes) {
            try {
                roles.add(Coded.of(Role.class, code));
            } catch (IllegalArgumentException e) {
                fields.complain("roles", e.getMessage());
            }
        }
        return roles;
    }
}
