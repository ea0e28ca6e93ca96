package wickbench.bench.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.gate.Question;
import wickbench.api.lot.LotFacts;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;
import wickbench.reading.Clearances;

/** What speaks against a method or a lot while one still chooses; not on the UI thread. */
final class StartAdvice {
    private static final String STOCK = "stock";
    /** Where no lot is named yet, the question needs one; what is said of it is left out. */
    private static final LotId ANY = new LotId("any");

    private final BenchDoors doors;
    private final Instant now;

    StartAdvice(BenchDoors doors) {
        this.doors = doors;
        now = doors.home().clock().instant();
    }

    /** Returns the lots that are fit for a method, first expired first; none where no stock is kept. */
    List<LotFacts> lots(Method method) {
        return doors.lots().stream()
                .flatMap(some -> some.fitFor(method.kit(), now).stream())
                .toList();
    }

    /** Returns why a person may not run a method, whatever the lot. */
    Optional<String> against(Method method, PersonId by) {
        if (!doors.lots().isEmpty() && lots(method).isEmpty()) {
            return Optional.of(FlowWords.get("pick.no-lot"));
        }
        return words(gates(method, ANY, by).stream()
                .filter(gate -> !gate.neighbour().equals(STOCK))
                .toList());
    }

    /** Returns why a person may not run a method with a lot. */
    Optional<String> against(Method method, LotId lot, PersonId by) {
        return words(gates(method, lot, by));
    }

    private List<Clearance> gates(Method method, LotId lot, PersonId by) {
        return doors.advice().gates(new Question(method.ref(), method.route(), lot, by, Optional.empty(), false, now));
    }

    private static Optional<String> words(List<Clearance> gates) {
        String words = gates.stream()
                .filter(gate -> gate.state() == State.REFUSED)
                .flatMap(gate -> gate.reasons().stream())
                .map(Clearances::toDo)
                .distinct()
                .collect(Collectors.joining(" "));
        return Optional.of(words).filter(some -> !some.isEmpty());
    }
}
