package wickbench.plant.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Hash;
import wickbench.plant.PlantState;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.Probe;
import wickbench.plant.programme.Programme.Asked;
import wickbench.plant.site.Sampling;

/** What a change that was made asks to be sampled. */
final class Asking {
    private Asking() {}

    static Optional<Asked> of(ChangeMade made, PlantState state, Optional<Changing> line) {
        return line.flatMap(changing -> state.product(made.from())
                .flatMap(from -> state.product(made.to()).map(to -> asked(made, changing.of(from, to)))));
    }

    private static Asked asked(ChangeMade made, Changeover change) {
        List<String> drawn = drawn(made, change);
        List<Sampling> samples = new ArrayList<>();
        for (Probe test : change.tests()) {
            if (!test.drawn() || drawn.contains(test.place())) {
                samples.add(test.sampling());
            }
        }
        return new Asked(change, samples);
    }

    /** Nobody can choose the points that suit, and everybody can reckon them afterwards: a hash of the change draws them. */
    private static List<String> drawn(ChangeMade made, Changeover change) {
        return change.tests().stream()
                .filter(Probe::drawn)
                .map(Probe::place)
                .distinct()
                .sorted(Comparator.comparing((String place) ->
                        Hash.ofContent(made.body().canonical() + "\n" + place).hex()))
                .limit(change.draw())
                .toList();
    }
}
