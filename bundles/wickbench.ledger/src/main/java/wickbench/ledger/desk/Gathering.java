package wickbench.ledger.desk;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.index.Index;
import wickbench.api.journal.Entry;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Step;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RunControl;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Standing.Tested;
import wickbench.ledger.acts.Subject;

/** Brings together what bears on a release. */
record Gathering(Index index, Results results, Acts acts, Cases cases, OwedWork work, SiteFacts site, Sight sight) {
    private static final int PAGE = 500;

    Gathered of(Subject subject) {
        List<ResultRow> rows = subject.sort() == Subject.Sort.BATCH
                ? all(Filter.ALL.withBatch(Optional.of(subject.name())), Instant.MIN)
                : all(Filter.ALL.withLine(Optional.of(subject.name())), lastReleased(subject));
        List<String> lines = lines(subject, rows);
        List<ReleasePlan> plans =
                lines.stream().flatMap(line -> acts.plan(line).stream()).toList();
        List<ResultRow> bearing = withReTests(rows);
        List<Tested> points = plans.stream()
                .flatMap(plan -> plan.points().stream())
                .distinct()
                .map(point -> tested(point, bearing))
                .toList();
        Map<UUID, ResultDetail> full = new LinkedHashMap<>();
        Map<UUID, Gathered.Controls> controls = new LinkedHashMap<>();
        points.stream().flatMap(point -> point.result().stream()).forEach(row -> {
            results.find(row.id()).ifPresent(detail -> full.put(row.id(), detail));
            controls.put(row.id(), controls(row));
        });
        List<Case> cases = cases(subject, bearing);
        Stream.of(
                        controls.values().stream().flatMap(Gathered.Controls::both),
                        cases.stream().map(Case::result),
                        subject.sort() == Subject.Sort.BATCH ? bearing.stream() : Stream.<ResultRow>empty())
                .flatMap(some -> some)
                .filter(row -> !full.containsKey(row.id()))
                .distinct()
                .toList()
                .forEach(row -> results.find(row.id()).ifPresent(detail -> full.put(row.id(), detail)));
        return new Gathered(
                subject,
                lines,
                plans,
                bearing,
                points,
                full,
                controls,
                cases,
                owed(subject, bearing, points),
                outside(subject),
                Bearing.on(acts.journal(), lines, bearing, cases).of(index.clashes()),
                sight.lacking());
    }

    private Instant lastReleased(Subject subject) {
        return acts.released(subject).stream()
                .map(Entry::at)
                .max(Instant::compareTo)
                .orElse(Instant.MIN);
    }

    private static List<String> lines(Subject subject, List<ResultRow> rows) {
        return subject.sort() == Subject.Sort.LINE
                ? List.of(subject.name())
                : rows.stream()
                        .flatMap(row -> row.line().stream())
                        .distinct()
                        .sorted()
                        .toList();
    }

    private List<ResultRow> all(Filter filter, Instant after) {
        List<ResultRow> all = new ArrayList<>();
        Optional<ResultRow> last = Optional.empty();
        boolean more = true;
        while (more) {
            ResultPage page = results.page(filter, Sort.NEWEST_FIRST, last, PAGE);
            page.rows().stream().filter(row -> row.happened().isAfter(after)).forEach(all::add);
            last = page.rows().stream().reduce((first, second) -> second);
            more = page.more()
                    && last.filter(row -> row.happened().isAfter(after)).isPresent();
        }
        return all;
    }

    /** New samples after a clean answer for the batch whose result asked for them, whatever batch stands on their label. */
    private List<ResultRow> withReTests(List<ResultRow> rows) {
        Map<UUID, ResultRow> found = new LinkedHashMap<>();
        rows.forEach(row -> found.put(row.id(), row));
        rows.stream()
                .flatMap(row ->
                        work.of(row.id()).stream().filter(item -> item.owes().equals(row.id())))
                .filter(item -> item.step() == Step.RE_TEST)
                .flatMap(item -> item.answers().stream())
                .flatMap(answer -> results.find(answer).stream())
                .map(ResultDetail::row)
                .forEach(row -> found.putIfAbsent(row.id(), row));
        return found.values().stream()
                .sorted(Comparator.comparing(ResultRow::happened).reversed())
                .toList();
    }

    /** Finds the newest strip of a point that may speak for it: no control, undiluted, and no repeat of an extract that held. */
    private static Tested tested(Point point, List<ResultRow> rows) {
        Set<String> held = new LinkedHashSet<>();
        rows.stream()
                .filter(row -> row.held() && row.method().id().equals(point.method()))
                .forEach(row -> held.add(row.sample()));
        Optional<ResultRow> newest = rows.stream()
                .filter(row -> row.place().equals(point.place()))
                .filter(row -> row.method().id().equals(point.method()))
                .filter(row -> row.control().isEmpty() && row.dilution().compareTo(BigDecimal.ONE) == 0)
                .filter(row -> row.held() || !held.contains(row.sample()))
                .findFirst();
        return new Tested(
                point,
                newest,
                newest.filter(row -> row.outcome() == Outcome.NEGATIVE && !row.inDoubt() && !row.held())
                        .isPresent());
    }

    private Gathered.Controls controls(ResultRow row) {
        LocalDate day = row.happened().atZone(site.now().zone()).toLocalDate();
        List<ResultRow> ofKit = all(
                Filter.ALL
                        .withLot(Optional.of(row.lot()))
                        .withMethod(Optional.of(row.method().id()))
                        .days(Optional.of(day), Optional.of(day)),
                Instant.MIN);
        return new Gathered.Controls(newest(ofKit, RunControl.LOW_POSITIVE), newest(ofKit, RunControl.BLANK));
    }

    private static Optional<ResultRow> newest(List<ResultRow> rows, RunControl control) {
        return rows.stream()
                .filter(row -> row.control().filter(control::equals).isPresent())
                .findFirst();
    }

    private List<Case> cases(Subject subject, List<ResultRow> rows) {
        Map<UUID, Case> found = new LinkedHashMap<>();
        Stream<UUID> named =
                subject.sort() == Subject.Sort.BATCH ? acts.decidedOnBatch(subject.name()).stream() : Stream.empty();
        Stream.concat(rows.stream().filter(ResultRow::held).map(ResultRow::id), named)
                .flatMap(id -> results.find(id).stream())
                .forEach(detail -> found.computeIfAbsent(detail.row().id(), id -> cases.of(detail.row())));
        cases.open().stream()
                .filter(each -> concerns(each, subject))
                .forEach(each -> found.putIfAbsent(each.result().id(), each));
        return List.copyOf(found.values());
    }

    private static boolean concerns(Case each, Subject subject) {
        return subject.sort() == Subject.Sort.BATCH
                ? each.products().stream().anyMatch(product -> product.name().equals(subject.name()))
                : each.result().line().filter(subject.name()::equals).isPresent();
    }

    /** What came up at a point long after a batch was tested speaks against it only where it puts the batch in question. */
    private List<OwedItem> owed(Subject subject, List<ResultRow> rows, List<Tested> points) {
        Set<UUID> ids = new LinkedHashSet<>();
        rows.forEach(row -> ids.add(row.id()));
        Set<String> places = new LinkedHashSet<>();
        points.forEach(point -> places.add(point.point().place()));
        boolean line = subject.sort() == Subject.Sort.LINE;
        Instant tested =
                rows.stream().map(ResultRow::happened).max(Instant::compareTo).orElse(Instant.MIN);
        return work.open().stream()
                .filter(item -> ids.contains(item.owes())
                        || places.contains(item.place())
                                && (line || !item.since().isAfter(tested))
                        || line && item.line().filter(subject.name()::equals).isPresent())
                .toList();
    }

    private List<Outside> outside(Subject subject) {
        return subject.sort() == Subject.Sort.BATCH ? acts.outsideOfBatch(subject.name()) : List.of();
    }
}
