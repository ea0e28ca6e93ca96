package wickbench.plant.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Rows;
import wickbench.api.method.Method;
import wickbench.api.method.Methods;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Outcome;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantState;
import wickbench.plant.PointLook;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.TestTime;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validating;
import wickbench.plant.clean.Validation.Lack;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.Programme;
import wickbench.plant.site.Sampling;

/** Answers for the plant. */
@Component
public final class PlantDesk implements PlantBook {
    private final Home home;
    private final Index index;
    private final SiteFacts site;
    private final Optional<Methods> methods;
    private final TestTime time = new TestTime();

    @Activate
    public PlantDesk(
            @Reference Home home,
            @Reference Index index,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Methods> methods) {
        this.home = home;
        this.index = index;
        this.site = site;
        this.methods = methods;
    }

    @Override
    public PlantState at(Instant at) {
        return read(at, (rows, fold) -> state(rows, fold, at));
    }

    @Override
    public Changing changing(String line, Instant at) {
        return changing(line, at(at), inForce(at));
    }

    private Changing changing(String line, PlantState state, List<Method> inForce) {
        return new Changing(
                state.line(line).orElseThrow(() -> Said.wrong("LINE", "line.unknown", line)),
                state.pointsOf(line),
                state.cleansOf(line),
                inForce,
                time);
    }

    @Override
    public List<DueItem> due(Instant at) {
        List<Method> inForce = inForce(at);
        return read(at, (rows, fold) -> {
            PlantState state = state(rows, fold, at);
            Map<String, Changing> lines = new HashMap<>();
            state.lines().forEach(line -> lines.put(line.id(), changing(line.id(), state, inForce)));
            Programme programme = new Programme(
                    fold.happened(),
                    (what, from, before) -> TestRows.first(
                            rows, what, from, Optional.of(before).filter(end -> !end.equals(Instant.MAX))),
                    change -> Asking.of(change, state, Optional.ofNullable(lines.get(change.line()))),
                    zone(),
                    at);
            return programme.of(state.rules());
        });
    }

    @Override
    public List<PointLook> looks(Instant at) {
        // points as they are now, whenever they were named: what was read at a place before counts too
        return read(now(), (rows, fold) -> {
            PlantState state = state(rows, fold, now());
            Map<String, List<TestRows.Tested>> latest = new HashMap<>();
            TestRows.latest(rows, at)
                    .forEach(each -> latest.computeIfAbsent(each.what().place(), place -> new ArrayList<>())
                            .add(each));
            return state.points().stream()
                    .map(point -> new PointLook(
                            point, state.spot(point.name()), gravest(latest.getOrDefault(point.name(), List.of()))))
                    .toList();
        });
    }

    private static Optional<PointLook.Latest> gravest(List<TestRows.Tested> of) {
        return of.stream()
                .max(Comparator.comparing((TestRows.Tested each) -> weight(each.outcome()))
                        .thenComparing(TestRows.Tested::started))
                .map(each -> new PointLook.Latest(each.result(), each.what().method(), each.outcome(), each.started()));
    }

    private static int weight(Outcome outcome) {
        return switch (outcome) {
            case NEGATIVE -> 0;
            case INVALID -> 1;
            case POSITIVE -> 2;
            case POSITIVE_ABOVE_RANGE -> 3;
        };
    }

    private <T> T read(Instant at, BiFunction<Rows, Fold, T> work) {
        if (!home.isBegun()) {
            return work.apply(new NoRows(), Fold.of(List.of(), at, zone()));
        }
        ZoneId zone = zone();
        return index.read(PlantView.NAME, rows -> work.apply(rows, Fold.of(PlantView.told(rows), at, zone)));
    }

    private static PlantState state(Rows rows, Fold fold, Instant at) {
        return fold.state(at, (series, run) -> lacks(rows, series, run));
    }

    private static List<Lack> lacks(Rows rows, Series series, SeriesRun run) {
        List<TestRows.Tested> read = run.readings().stream()
                .flatMap(id -> TestRows.of(rows, id).stream())
                .filter(each -> !each.started().isBefore(run.at()))
                .toList();
        return Validating.lacks(series, run, point -> negative(read, point));
    }

    /** Several readings of a point: each must be Negative; an Invalid without a sign of allergen proves nothing. */
    private static Optional<Boolean> negative(List<TestRows.Tested> read, Sampling point) {
        return read.stream()
                .filter(each -> each.what().equals(point) && each.says())
                .map(TestRows.Tested::negative)
                .reduce((one, other) -> one && other);
    }

    private List<Method> inForce(Instant at) {
        return methods.filter(shelf -> home.isBegun())
                .map(shelf -> shelf.all().stream()
                        .flatMap(issued -> shelf.inForce(issued.method().ref().id(), at).stream())
                        .toList())
                .orElse(List.of());
    }

    @Override
    public Instant now() {
        return home.clock().instant();
    }

    @Override
    public ZoneId zone() {
        return home.isBegun() ? site.now().zone() : ZoneId.of("UTC");
    }
}
