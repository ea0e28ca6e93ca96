package wickbench.people;

import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * The body of {@code recovery.sealed}: a recovery code lies sealed from now on, and no earlier one opens anything.
 *
 * @param code Argon2id, as text
 */
record CodeSealed(String code) {
    static final String KIND = "recovery.sealed";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object().with("code", code);
    }

    static Checked<CodeSealed> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        String code = fields.text("code");
        Enrolled.passSignatures(fields);
        return fields.finish(() -> new CodeSealed(code));
    }
}
