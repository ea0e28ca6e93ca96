package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Visual;

/** A situation for each row of the findings table, and more. Common practice, no source. */
final class FindingsTable {
    static final List<Row> ROWS = List.of(
            voids("line.control-not-seen", "no control line", g -> line(g, LineRole.CONTROL, Seen.NOT_SEEN)),
            voids("line.damaged", "control line damaged", g -> line(g, LineRole.CONTROL, Seen.DAMAGED)),
            voids("line.damaged", "hook line damaged", g -> line(g, LineRole.HOOK, Seen.DAMAGED)),
            voids("line.damaged", "test line damaged", g -> line(g, LineRole.TEST, Seen.DAMAGED)),
            voids("time.not-stated", "no start stated", g -> g.started = Optional.empty()),
            voids("time.not-stated", "no reading time stated", g -> g.read = Optional.empty()),
            voids("time.read-early", "read sooner after the start than develop", g -> g.read = after(299)),
            voids("time.read-late", "read later after the start than develop + window", g -> g.read = after(361)),
            bars(
                    "time.warm-up-short",
                    "less warm-up than the method asks",
                    g -> g.outOfFridge = Optional.of(Given.START.minusSeconds(1199))),
            caution("time.warm-up-short", "warm-up not stated", g -> g.outOfFridge = Optional.empty()),
            bars(
                    "time.shake-short",
                    "less shaking than the method asks",
                    g -> g.shaken = Optional.of(Duration.ofSeconds(59))),
            caution("time.shake-short", "shaking not stated", g -> g.shaken = Optional.empty()),
            bars(
                    "time.extract-old",
                    "started later than the hold time after extraction",
                    g -> g.extracted = Optional.of(Given.START.minusSeconds(10_801))),
            bars("time.extract-old", "extracted after the start: the times are wrong", g -> g.extracted = after(1)),
            caution("time.extract-old", "extraction not stated", g -> g.extracted = Optional.empty()),
            bars("sample.pre-check", "below the range", g -> preCheck(g, "5.99")),
            bars("sample.pre-check", "above the range", g -> preCheck(g, "8.01")),
            caution("sample.pre-check", "asked for and not stated", g -> preCheck(g, null)),
            caution("sample.visibly-soiled", "visual check failed", g -> g.visual = Optional.of(Visual.SOILED)),
            bars("lot.expired", "said by stock", g -> refused(g, "stock", "lot.expired")),
            bars("lot.not-checked-in", "said by stock", g -> refused(g, "stock", "lot.not-checked-in")),
            bars("lot.storage", "said by stock", g -> refused(g, "stock", "lot.storage")),
            bars("lot.quarantined", "said by stock", g -> refused(g, "stock", "lot.quarantined")),
            bars("lot.pouch-age", "said by stock", g -> refused(g, "stock", "lot.pouch-age")),
            caution("lot.none-left", "said by stock", g -> refused(g, "stock", "lot.none-left")),
            bars("lot.other-kit", "said by stock", g -> refused(g, "stock", "lot.other-kit")),
            caution("lot.other-insert", "said by stock", g -> refused(g, "stock", "lot.other-insert")),
            caution("method.not-verified", "said by evidence", g -> refused(g, "evidence", "method.not-verified")),
            caution(
                    "method.not-verified-here",
                    "said by evidence",
                    g -> refused(g, "evidence", "method.not-verified-here")),
            caution("equipment.overdue", "said by stock", g -> refused(g, "stock", "equipment.overdue")),
            bars("operator.not-authorised", "said by training", g -> refused(g, "training", "operator.not-authorised")),
            caution("operator.not-authorised", "read by an authorised observer", g -> {
                refused(g, "training", "operator.not-authorised");
                g.observer = Optional.of(Given.OTHER);
            }),
            bars("operator.lapsed", "said by training", g -> refused(g, "training", "operator.lapsed")),
            caution("operator.lapsed", "read by an authorised observer", g -> {
                refused(g, "training", "operator.lapsed");
                g.observer = Optional.of(Given.OTHER);
            }),
            bars("observer.not-authorised", "the observer may not test either", g -> {
                refused(g, "training", "observer.not-authorised");
                g.observer = Optional.of(Given.OTHER);
            }),
            bars("plant.closed", "any other refusal, observed or not", g -> {
                refused(g, "plant", "plant.closed");
                g.observer = Optional.of(Given.OTHER);
            }),
            bars(
                    "plant-refused",
                    "a refusal without a reason",
                    g -> g.answers = List.of(new Answer.Refused("plant", Map.of(), List.of()))),
            bars("control.failed", "the run's positive control failed", g -> g.controlFailed = true),
            caution("stock-not-checked", "stock is absent", g -> notChecked(g, "stock")),
            caution("training-not-checked", "training is absent", g -> notChecked(g, "training")),
            caution("plant-not-checked", "any other neighbour is absent", g -> notChecked(g, "plant")),
            bars(
                    "stock-not-checked",
                    "stock is absent and the site profile requires it",
                    g -> g.answers = List.of(new Answer.NotChecked("stock", true))));

    private FindingsTable() {}

    /**
     * What to do to a good reading of any format, and which finding it must give.
     *
     * @param when the situation in words
     */
    record Row(String rule, String when, Severity severity, Consumer<Given> change) {
        boolean fits(Format format) {
            return format == Format.SANDWICH_HOOK || !when.startsWith("hook");
        }
    }

    private static Row voids(String rule, String when, Consumer<Given> change) {
        return new Row(rule, when, Severity.VOIDS, change);
    }

    private static Row bars(String rule, String when, Consumer<Given> change) {
        return new Row(rule, when, Severity.BARS_NEGATIVE, change);
    }

    private static Row caution(String rule, String when, Consumer<Given> change) {
        return new Row(rule, when, Severity.CAUTION, change);
    }

    private static void line(Given given, LineRole role, Seen seen) {
        given.strip = Given.with(given.strip, role, seen);
    }

    private static Optional<Instant> after(long seconds) {
        return Optional.of(Given.START.plusSeconds(seconds));
    }

    private static void preCheck(Given given, String measured) {
        given.preChecks =
                List.of(new PreCheck("rinse pH", new Range(new BigDecimal("6"), new BigDecimal("8.0"), Unit.PH)));
        given.measured = measured == null ? Map.of() : Map.of("rinse pH", new BigDecimal(measured));
    }

    private static void refused(Given given, String neighbour, String code) {
        given.answers = List.of(new Answer.Refused(neighbour, Map.of(), List.of(new Reason(code, "bad", "good"))));
    }

    private static void notChecked(Given given, String neighbour) {
        given.answers = List.of(new Answer.NotChecked(neighbour));
    }
}
