package wickbench.plant.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.clash.Clash;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.index.Rows;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Step;
import wickbench.api.profile.SiteFacts;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantState;
import wickbench.plant.PointLook;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.Disputes;
import wickbench.plant.changeover.TestTime;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.Programme;

/** Answers for the plant. */
@Component
public final class PlantDesk implements PlantBook {
    private final Home home;
    private final Index index;
    private final SiteFacts site;
    private final Optional<Methods> methods;
    private final Optional<OwedWork> owed;
    private final TestTime time = new TestTime();

    @Activate
    public PlantDesk(
            @Reference Home home,
            @Reference Index index,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Methods> methods,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<OwedWork> owed) {
        this.home = home;
        this.index = index;
        this.site = site;
        this.methods = methods;
        this.owed = owed;
    }

    @Override
    public PlantState at(Instant at) {
        Set<UUID> doubted = doubted();
        return read(at, (rows, fold) -> fold.state(at, new Judging(rows, doubted)));
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
                time,
                state.disputes());
    }

    @Override
    public List<DueItem> due(Instant at) {
        List<Method> inForce = inForce(at);
        Set<UUID> doubted = doubted();
        return read(at, (rows, fold) -> {
            PlantState state = fold.state(at, new Judging(rows, doubted));
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
        Set<UUID> doubted = doubted();
        return read(
                now(),
                (rows, fold) -> new Looking(rows, doubted).at(at, fold.state(now(), new Judging(rows, doubted))));
    }

    /** Negatives that wait for a decision; none where the bench is not installed, which is told of all that is owed. */
    private Set<UUID> doubted() {
        return owed.filter(work -> home.isBegun())
                .map(work -> work.open().stream()
                        .filter(item -> item.step() == Step.DECIDE)
                        .map(OwedItem::owes)
                        .collect(Collectors.toSet()))
                .orElse(Set.of());
    }

    private Disputes disputes() {
        return new Disputes(index.clashes().stream()
                .map(Clash::subject)
                .filter(subject -> subject.startsWith(Disputes.PLANT))
                .collect(Collectors.toSet()));
    }

    private <T> T read(Instant at, BiFunction<Rows, Fold, T> work) {
        if (!home.isBegun()) {
            return work.apply(new NoRows(), Fold.of(List.of(), at, zone(), Disputes.NONE));
        }
        ZoneId zone = zone();
        Disputes disputes = disputes();
        return index.read(PlantView.NAME, rows -> work.apply(rows, Fold.of(PlantView.told(rows), at, zone, disputes)));
    }

    @Override
    public List<MethodId> methods(Instant at) {
        return inForce(at).stream().map(method -> method.ref().id()).toList();
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
