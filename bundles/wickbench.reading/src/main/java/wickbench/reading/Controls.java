package wickbench.reading;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Verdict;
import wickbench.reading.RunJudgement.Unjudged;

/** Which strips of a run stand in the shadow of a failed positive control; strips are named by their place in it. */
final class Controls {
    private final List<Unjudged> run;
    private final List<Verdict> alone;

    Controls(List<Unjudged> run, List<Verdict> alone) {
        this.run = run;
        this.alone = alone;
    }

    private record Kit(MethodId method, LotId lot) {}

    /** @param shadowed tells of a strip whether the last control before it, in an earlier run, had failed */
    Set<Integer> barred(Predicate<Unjudged> shadowed) {
        Set<Integer> barred = new HashSet<>();
        kits().forEach(strips -> {
            List<List<Integer>> stretches = cut(strips);
            stretches.stream()
                    .filter(stretch -> stretch.stream().anyMatch(this::failed))
                    .forEach(barred::addAll);
            // a good control of this run ends what an earlier one began
            stretches.get(0).stream()
                    .filter(strip -> shadowed.test(run.get(strip)))
                    .forEach(barred::add);
        });
        barred.removeIf(this::lowPositive);
        return barred;
    }

    /** Returns each kit's strips in order of start. */
    private Collection<List<Integer>> kits() {
        return IntStream.range(0, run.size())
                .boxed()
                .sorted(Comparator.comparing(this::order))
                .collect(Collectors.groupingBy(this::kit))
                .values();
    }

    /** Cuts a kit's strips at its good controls. */
    private List<List<Integer>> cut(List<Integer> strips) {
        if (strips.stream().anyMatch(strip -> failed(strip) && start(strip).isEmpty())) {
            // a failed control that nobody can place in time may have followed any strip
            return List.of(strips);
        }
        List<List<Integer>> stretches = new ArrayList<>(List.of(new ArrayList<>()));
        for (Integer strip : strips) {
            if (good(strip)) {
                stretches.add(new ArrayList<>());
            } else {
                stretches.get(stretches.size() - 1).add(strip);
            }
        }
        return stretches;
    }

    private boolean good(int strip) {
        return lowPositive(strip) && alone.get(strip).outcome().positive();
    }

    private boolean failed(int strip) {
        return lowPositive(strip) && !alone.get(strip).outcome().positive();
    }

    private boolean lowPositive(int strip) {
        return reading(strip).sample().control().equals(Optional.of(RunControl.LOW_POSITIVE));
    }

    private Instant order(int strip) {
        return start(strip).orElse(Instant.MAX);
    }

    private Optional<Instant> start(int strip) {
        return reading(strip).times().started();
    }

    private Kit kit(int strip) {
        return new Kit(reading(strip).method(), reading(strip).lot());
    }

    private Reading reading(int strip) {
        return run.get(strip).reading();
    }
}
