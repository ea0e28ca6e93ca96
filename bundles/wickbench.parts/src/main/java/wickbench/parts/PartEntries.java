package wickbench.parts;

import java.util.Optional;
import java.util.random.RandomGenerator;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.parts.plan.SetId;
import wickbench.parts.running.ArchiveSource;

/** What the journal says of sets: {@code part.added}, {@code part.removed} and {@code part.refused}, version 1. */
final class PartEntries {
    private static final int VERSION = 1;

    private PartEntries() {}

    /** A set was added; of one out of an archive also which, and by whom it was made. */
    static Draft added(SetId id, Optional<ArchiveSource> archive, PersonId by, RandomGenerator chance) {
        Json.Obj body = named(id)
                .withText(
                        "sha256", archive.map(source -> source.archive().hash().toString()))
                .withText("maker", archive.map(source -> source.archive().maker()));
        return new Draft(Draft.randomId(chance), by, "part.added", VERSION, body);
    }

    static Draft removed(SetId id, PersonId by, RandomGenerator chance) {
        return new Draft(Draft.randomId(chance), by, "part.removed", VERSION, named(id));
    }

    /** Somebody tried to add a set and was refused by that rule. */
    static Draft refused(String file, String code, PersonId by, RandomGenerator chance) {
        Json.Obj body = Json.object().with("file", file).with("code", code);
        return new Draft(Draft.randomId(chance), by, "part.refused", VERSION, body);
    }

    private static Json.Obj named(SetId id) {
        return Json.object()
                .with("name", id.name())
                .with("version", id.version().toString());
    }
}
