package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import wickbench.api.gate.Answer;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.reading.Outcome;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;
import wickbench.ledger.acts.Standing.Tested;
import wickbench.ledger.acts.Subject;

/** What speaks against letting a line or batch go: small rules, each of which says no for itself. */
final class ReleaseRules {
    private static final List<Function<Gathered, List<No>>> ALL = List.of(
            ReleaseRules::tested,
            ReleaseRules::planned,
            ReleaseRules::points,
            ReleaseRules::controls,
            ReleaseRules::checks,
            ReleaseRules::held,
            ReleaseRules::owed,
            ReleaseRules::outside,
            ReleaseRules::clashes,
            ReleaseRules::asRecorded,
            Gathered::lacking);

    private ReleaseRules() {}

    static List<No> against(Gathered of) {
        Set<No> reasons = new LinkedHashSet<>();
        ALL.forEach(rule -> reasons.addAll(rule.apply(of)));
        return List.copyOf(reasons);
    }

    private static List<No> tested(Gathered of) {
        return of.results().isEmpty()
                ? List.of(no("release.nothing-tested", of.subject().name()))
                : List.of();
    }

    private static List<No> planned(Gathered of) {
        List<No> reasons = new ArrayList<>();
        if (of.lines().isEmpty() && !of.results().isEmpty()) {
            reasons.add(no("release.no-line", of.subject().name()));
        }
        of.lines().stream()
                .filter(line -> of.plans().stream()
                        .noneMatch(plan ->
                                plan.line().equals(line) && !plan.points().isEmpty()))
                .map(line -> no("release.no-plan", line))
                .forEach(reasons::add);
        return reasons;
    }

    private static List<No> points(Gathered of) {
        return of.points().stream()
                .filter(point -> !point.good())
                .map(ReleaseRules::point)
                .toList();
    }

    private static No point(Tested point) {
        String code = point.result().map(ReleaseRules::standing).orElse("release.point-missing");
        return no(code, point.point().place(), point.point().method());
    }

    private static String standing(ResultRow row) {
        if (row.outcome().positive() || row.held()) {
            return "release.point-positive";
        }
        return row.outcome() == Outcome.INVALID ? "release.point-invalid" : "release.point-in-doubt";
    }

    /** Each kit that a point rests on has shown on that day that it finds what is there, and nothing where nothing is. */
    private static List<No> controls(Gathered of) {
        List<No> reasons = new ArrayList<>();
        for (ResultRow row : of.rests()) {
            Gathered.Controls controls = of.controls().get(row.id());
            Object[] kit = {row.method().id(), row.lot()};
            if (controls.lowPositive().isEmpty()) {
                reasons.add(no("release.control-missing", kit));
            } else if (!controls.lowPositive().get().outcome().positive()) {
                reasons.add(no("release.control-failed", kit));
            }
            controls.blank()
                    .filter(blank -> blank.outcome() != Outcome.NEGATIVE)
                    .ifPresent(blank -> reasons.add(no("release.blank-failed", kit)));
        }
        return reasons;
    }

    private static List<No> checks(Gathered of) {
        return of.rests().stream()
                .map(row -> Optional.ofNullable(of.full().get(row.id())))
                .flatMap(Optional::stream)
                .flatMap(ReleaseRules::unchecked)
                .toList();
    }

    private static Stream<No> unchecked(ResultDetail detail) {
        String sample = detail.row().sample();
        Map<String, ?> measured = detail.reading().reading().preChecks();
        Stream<No> asked = detail.reading().method().preChecks().stream()
                .map(PreCheck::name)
                .filter(name -> !measured.containsKey(name))
                .map(name -> no("release.check-missing", name, sample));
        Stream<No> gates = detail.reading().answers().stream()
                .filter(answer -> answer instanceof Answer.NotChecked absent && absent.required())
                .map(answer -> no("release.check-missing", answer.neighbour(), sample));
        return Stream.concat(asked, gates);
    }

    private static List<No> held(Gathered of) {
        return of.cases().stream()
                .flatMap(each -> each.products().stream()
                        .filter(product -> concerned(of, each, product))
                        .filter(product -> !product.state().mayGo())
                        .map(product -> held(each, product)))
                .toList();
    }

    private static boolean concerned(Gathered of, Case each, Product product) {
        return of.subject().sort() == Subject.Sort.LINE
                || product.name().equals(of.subject().name())
                || product.name().isEmpty() && each.result().batch().isEmpty();
    }

    private static No held(Case each, Product product) {
        String code = product.state() == ProductState.DESTROYED ? "release.destroyed" : "release.held";
        return no(
                code,
                each.result().sample(),
                each.result().place(),
                ActsWords.get("state." + product.state().code()));
    }

    private static List<No> owed(Gathered of) {
        return of.owed().stream()
                .map(item -> no(
                        "release.owed-open",
                        ActsWords.get("step." + item.step().code()),
                        item.sample().isEmpty() ? item.place() : item.sample()))
                .toList();
    }

    /** A report that found allergen speaks against the batch, unless its label declares it by now. */
    private static List<No> outside(Gathered of) {
        boolean relabelled = of.cases().stream()
                .flatMap(each -> each.products().stream())
                .anyMatch(product ->
                        product.name().equals(of.subject().name()) && product.state() == ProductState.RELABELLED);
        return of.outside().stream()
                .filter(Outside::detected)
                .filter(report -> !relabelled)
                .map(report -> no("release.outside-detected", report.laboratory(), report.reference(), report.target()))
                .toList();
    }

    private static List<No> clashes(Gathered of) {
        return of.clashes().stream()
                .map(clash -> no("release.clash", clash.subject()))
                .toList();
    }

    private static List<No> asRecorded(Gathered of) {
        return of.full().values().stream()
                .filter(detail -> !detail.asRecorded())
                .map(detail -> no("release.differs", detail.row().sample()))
                .toList();
    }

    static No no(String code, Object... values) {
        return new No(code, ActsWords.get(code, values));
    }
}
