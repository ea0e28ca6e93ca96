package wickbench.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.KeptSum;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;

/** What the plant keeps to show that its methods work there: invented detection studies, action levels and carry-over. */
record MethodEvidence(Doors doors, PersonId by) {
    /** The plant has not come to it yet, so the bench minds it. */
    private static final Set<String> NOT_YET = Set.of("milk-swab-wet");

    /** Levels in tenths of the method's limit, strips, positives. */
    private static final List<int[]> STUDY = List.of(
            new int[] {0, 5, 0},
            new int[] {2, 20, 6},
            new int[] {5, 20, 12},
            new int[] {10, 20, 18},
            new int[] {20, 20, 20},
            new int[] {40, 5, 5});

    void of(Method method) {
        if (NOT_YET.contains(method.ref().id().value())) {
            return;
        }
        List<String> shown = new ArrayList<>();
        shown.add(keep("detection", study(method), "Detection study of " + method.ref() + ", invented"));
        shown.add(
                method.route().food()
                        ? keep(
                                "action-level",
                                texts(Map.of("dose", "2", "amount", "50")),
                                "Action level, invented portion")
                        : keep("carry-over", carryOver(method), "Carry-over into the next product, invented line"));
        Json.Obj what = Json.object()
                .with("method", method.ref().id().value())
                .with("version", method.ref().version());
        Json.Obj works = method.route().food()
                ? what.with("food", "milk chocolate and nougat")
                : what.with("surface", "stainless steel").with("cleaner", "alkaline foam, rinsed");
        write(
                "method.verified",
                works.with("evidence", Json.texts(shown)).with("remark", "Invented for the demonstration."));
    }

    private static Given study(Method method) {
        BigDecimal limit = method.limit().value().value();
        StringBuilder rows = new StringBuilder("level,tests,positives");
        for (int[] row : STUDY) {
            BigDecimal level = limit.multiply(BigDecimal.valueOf(row[0])).movePointLeft(1);
            rows.append('\n')
                    .append(level.toPlainString())
                    .append(',')
                    .append(row[1])
                    .append(',')
                    .append(row[2]);
        }
        return new Given(Map.of(), Map.of("study", TableText.of("", rows.toString())));
    }

    private static Given carryOver(Method method) {
        return method.route().swab()
                ? texts(Map.of("area", "4", "recovery", "0.5", "batch", "300", "first-off", "10", "action-level", "40"))
                : texts(Map.of("hold-up", "3", "batch", "500", "first-off", "20", "action-level", "40"));
    }

    private static Given texts(Map<String, String> texts) {
        return new Given(texts, Map.of());
    }

    private String keep(String id, Given given, String about) {
        Sum sum = Sums.find(id).orElseThrow();
        if (!(sum.reckon(given) instanceof Reckoned.Done done)) {
            throw new IllegalStateException("the demonstration's " + id + " gives no answer");
        }
        return write(KeptSum.KIND, KeptSum.of(sum, done, Optional.of(about)).body());
    }

    private String write(String kind, Json.Obj body) {
        Draft draft = new Draft(Draft.contentId(kind, body), by, kind, 1, body);
        return doors.journal().append(List.of(draft)).get(0).ref().toString();
    }
}
