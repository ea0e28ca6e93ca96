package wickbench.plant.book;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.Rows;
import wickbench.api.reading.Outcome;
import wickbench.plant.PlantState;
import wickbench.plant.PointLook;
import wickbench.plant.PointLook.Latest;

/**
 * Looks at points by their latest outcome.
 *
 * @param doubted Negatives that something put in doubt and on which nobody has decided
 */
record Looking(Rows rows, Set<UUID> doubted) {

    List<PointLook> at(Instant at, PlantState state) {
        Map<String, List<Latest>> latest = new HashMap<>();
        TestRows.latest(rows, at)
                .forEach(each -> latest.computeIfAbsent(each.what().place(), place -> new ArrayList<>())
                        .add(latest(each)));
        return state.points().stream()
                .map(point -> new PointLook(
                        point, state.spot(point.name()), gravest(latest.getOrDefault(point.name(), List.of()))))
                .toList();
    }

    private Latest latest(TestRows.Tested each) {
        boolean doubt = each.outcome() == Outcome.NEGATIVE && doubted.contains(each.result());
        return new Latest(each.result(), each.what().method(), each.outcome(), each.started(), doubt);
    }

    private static Optional<Latest> gravest(List<Latest> of) {
        return of.stream()
                .max(Comparator.comparing((Latest each) -> weight(each.outcome()))
                        .thenComparing(Latest::doubted)
                        .thenComparing(Latest::started));
    }

    private static int weight(Outcome outcome) {
        return switch (outcome) {
            case NEGATIVE -> 0;
            case INVALID -> 1;
            case POSITIVE -> 2;
            case POSITIVE_ABOVE_RANGE -> 3;
        };
    }
}
