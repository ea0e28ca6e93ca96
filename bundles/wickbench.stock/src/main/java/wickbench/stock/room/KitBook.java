package wickbench.stock.room;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickbench.stock.Kit;

/** Every definition of every kit. */
final class KitBook {
    private final Map<String, List<Defined>> byName = new TreeMap<>();

    /** A definition and from when on it holds. */
    record Defined(Instant from, Kit kit) {}

    /** @param defined in the order in which they hold */
    KitBook(List<Defined> defined) {
        defined.forEach(each -> byName.computeIfAbsent(each.kit().name(), name -> new ArrayList<>())
                .add(each));
    }

    List<Kit> newest() {
        return byName.values().stream()
                .map(all -> all.get(all.size() - 1).kit())
                .toList();
    }

    /** Returns how a kit was defined at an instant; before its first definition, that one. */
    Optional<Kit> at(String name, Instant at) {
        List<Defined> all = byName.getOrDefault(name, List.of());
        return all.stream()
                .filter(each -> !each.from().isAfter(at))
                .reduce((older, newer) -> newer)
                .or(() -> all.stream().findFirst())
                .map(Defined::kit);
    }
}
