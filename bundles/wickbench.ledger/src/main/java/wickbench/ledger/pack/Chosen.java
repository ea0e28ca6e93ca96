package wickbench.ledger.pack;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.ledger.ResultRow;

/**
 * The entries that belong into a pack: what says something of its results, whatever its kind, and what they rest on.
 *
 * <p>An entry belongs when it is one of a result, or names one that belongs by id or place. What results rest on is known by a
 * name in it: the method in its version, the lot, who read the strip, the plan of the line; such an entry brings with it only
 * what was attached to it.
 */
final class Chosen {
    private final Set<EntryRef> entries = new TreeSet<>(
            Comparator.comparing((EntryRef ref) -> ref.station().value()).thenComparing(EntryRef::seq));
    private final Set<String> named = new HashSet<>();
    private final Set<String> placed = new HashSet<>();
    private final Set<String> methods = new HashSet<>();
    private final Set<String> lots = new HashSet<>();
    private final Set<String> operators = new HashSet<>();
    private final Set<String> lines = new HashSet<>();
    private final Set<String> batches = new HashSet<>();

    /** Notes a result that is asked for. */
    void result(ResultRow row) {
        named.add(row.id().toString());
        methods.add(row.method().id().value());
        lots.add(row.lot().value());
        operators.add(row.operator().value());
        row.line().ifPresent(lines::add);
        row.batch().ifPresent(batches::add);
    }

    /** Takes an entry if it belongs; tells whether it is new. */
    boolean take(Entry entry) {
        if (entries.contains(entry.ref())) {
            return false;
        }
        if (named.contains(entry.id().toString()) || names(entry.body(), named)) {
            named.add(entry.id().toString());
            named.add(entry.ref().toString());
            return entries.add(entry.ref());
        }
        if (isGround(entry) || names(entry.body(), placed)) {
            placed.add(entry.ref().toString());
            return entries.add(entry.ref());
        }
        return false;
    }

    Set<EntryRef> entries() {
        return entries;
    }

    private boolean isGround(Entry entry) {
        String kind = entry.kind();
        Json.Obj body = entry.body();
        if (kind.equals("station.founded") || kind.equals("station.forked") || kind.equals("profile.issued")) {
            return true;
        }
        if (kind.startsWith("method.")) {
            return has(body, "method", methods)
                    || body.get("method")
                            .filter(Json.Obj.class::isInstance)
                            .map(Json.Obj.class::cast)
                            .filter(method -> has(method, "id", methods))
                            .isPresent();
        }
        return kind.startsWith("lot.") && has(body, "lot", lots)
                || kind.startsWith("training.") && has(body, "person", operators)
                || kind.equals("release.planned") && has(body, "line", lines)
                || kind.equals("outside.reported") && has(body, "batch", batches)
                || kind.equals("release.recorded") && (has(body, "name", batches) || has(body, "name", lines));
    }

    private static boolean has(Json.Obj body, String member, Set<String> known) {
        Optional<Json> value = body.get(member);
        return value.filter(Json.Text.class::isInstance)
                .map(Json.Text.class::cast)
                .filter(text -> known.contains(text.value()))
                .isPresent();
    }

    private static boolean names(Json value, Set<String> known) {
        if (value instanceof Json.Obj object) {
            return object.members().values().stream().anyMatch(member -> names(member, known));
        }
        if (value instanceof Json.Arr array) {
            return array.items().stream().anyMatch(item -> names(item, known));
        }
        return value instanceof Json.Text text && known.contains(text.value());
    }
}
