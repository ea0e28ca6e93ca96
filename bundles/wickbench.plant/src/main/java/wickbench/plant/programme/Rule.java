package wickbench.plant.programme;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.Reason;
import wickbench.api.words.Coded;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.entry.Taking;
import wickbench.plant.site.Sampling;

/**
 * A rule of the programme; the body of {@code rule.stated}.
 *
 * @param when what makes it due
 * @param leaving after changeovers: only where one of these allergens leaves; empty for all that ask for a test
 * @param everyDays periodic: after how many days again
 * @param withinHours until when it is to be done, counted from what made it due
 * @param points what is sampled; empty after a changeover for what the change itself asks for
 */
public record Rule(
        String id, String line, When when, Set<String> leaving, int everyDays, int withinHours, List<Sampling> points) {
    public static final String KIND = "rule.stated";

    private static final int MOST_DAYS = 366;
    private static final int MOST_HOURS = 24 * 366;
    private static final int WEEK = 7;
    private static final int DAY = 24;

    public Rule {
        leaving = Set.copyOf(leaving);
        points = List.copyOf(points);
    }

    /** What makes a rule due. */
    public enum When implements Coded {
        CHANGEOVER(Reason.CHANGEOVER),
        /** The first product after a changeover. */
        FIRST_OFF(Reason.FIRST_OFF),
        PERIODIC(Reason.PERIODIC),
        MAINTENANCE(Reason.START_UP);

        private final Reason reason;

        When(Reason reason) {
            this.reason = reason;
        }

        /** Returns the reason that its samples are taken for. */
        public Reason reason() {
            return reason;
        }

        public boolean change() {
            return this == CHANGEOVER || this == FIRST_OFF;
        }
    }

    public Json.Obj body() {
        Json.Obj body = Json.object()
                .with("rule", id)
                .with("line", line)
                .with("when", when.code())
                .with("within_hours", withinHours)
                .with("points", Json.array(points.stream().map(Sampling::json).toList()));
        if (when == When.PERIODIC) {
            body = body.with("every_days", everyDays);
        }
        return leaving.isEmpty()
                ? body
                : body.with(
                        "leaving", Json.texts(new TreeSet<>(leaving).stream().toList()));
    }

    /** Reads a body. */
    public static Checked<Rule> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String id = fields.text("rule");
        String line = fields.text("line");
        Optional<When> when = taking.choice("when", When.class);
        Set<String> leaving = Set.copyOf(taking.values("leaving", Allergens::known));
        int days = taking.whole("every_days", 1, MOST_DAYS, Optional.of(WEEK));
        int hours = taking.whole("within_hours", 1, MOST_HOURS, Optional.of(DAY));
        List<Sampling> points = fields.children("points").stream()
                .flatMap(point -> Sampling.read(point).stream())
                .toList();
        if (points.isEmpty() && when.filter(some -> some != When.CHANGEOVER).isPresent()) {
            fields.complain("points", "expected at least one point with its method");
        }
        return fields.finish(() -> new Rule(id, line, when.orElseThrow(), leaving, days, hours, points));
    }
}
