package wickbench.plant.clean;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.entry.Taking;

/**
 * A cleaning procedure of a line; the body of {@code cleaning.stated}.
 *
 * @param edition of the written procedure; another edition is another clean until it is shown to work
 * @param removes codes of the allergens that it is meant for; empty for all
 */
public record Clean(String id, String line, String name, How how, int minutes, int edition, Set<String> removes) {
    public static final String KIND = "cleaning.stated";

    private static final int LONGEST = 10_000;

    public Clean {
        removes = Set.copyOf(removes);
    }

    /** How it is done. */
    public enum How implements Coded {
        DRY,
        WET,
        IN_PLACE,
        FLUSH
    }

    /** Tells whether it is meant for all of these allergens. */
    public boolean isFor(Set<String> allergens) {
        return removes.isEmpty() || removes.containsAll(allergens);
    }

    public Json.Obj body() {
        Json.Obj body = Json.object()
                .with("clean", id)
                .with("line", line)
                .with("name", name)
                .with("how", how.code())
                .with("minutes", minutes)
                .with("edition", edition);
        return removes.isEmpty()
                ? body
                : body.with(
                        "removes", Json.texts(new TreeSet<>(removes).stream().toList()));
    }

    /** Reads a body. */
    public static Checked<Clean> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String id = fields.text("clean");
        String line = fields.text("line");
        String name = fields.text("name");
        Optional<How> how = taking.choice("how", How.class);
        int minutes = taking.whole("minutes", 1, LONGEST, Optional.empty());
        int edition = taking.whole("edition", 1, LONGEST, Optional.of(1));
        Set<String> removes = Set.copyOf(taking.values("removes", Allergens::known));
        return fields.finish(() -> new Clean(id, line, name, how.orElseThrow(), minutes, edition, removes));
    }
}
