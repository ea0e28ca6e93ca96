package wickbench.training.round;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.training.RoundKey.Sealed;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;
import wickbench.training.Truth;

/**
 * What is right to call of each strip, once the key is opened.
 *
 * @param strips by code, in the order of the round
 * @param disputed near-limit strips whose experts did not agree; nobody can be right or wrong about them
 */
record Keyed(Map<String, Truth> strips, List<String> disputed) {

    static Keyed of(Round round) {
        Map<String, Truth> strips = new LinkedHashMap<>();
        List<String> disputed = new ArrayList<>();
        List<Sealed> sealed = round.key().orElseThrow().key().strips();
        for (Sealed strip : sealed) {
            Optional<Outcome> expected = strip.kind()
                    .expected()
                    .or(() -> strip.line()
                            .or(() -> consensus(round, strip.code()))
                            .map(line -> StripClass.ofLine(round.plan().format(), line)));
            expected.ifPresentOrElse(
                    outcome -> strips.put(strip.code(), new Truth(strip.item(), strip.kind(), outcome)),
                    () -> disputed.add(strip.code()));
        }
        return new Keyed(strips, disputed);
    }

    /** Returns whether the test line is there, where at least two experts read in time and all of those agree. */
    private static Optional<Boolean> consensus(Round round, String code) {
        List<Call> inTime = round.plan().experts().stream()
                .flatMap(expert -> round.callsOf(expert).stream())
                .filter(call -> call.code().equals(code) && round.plan().inside(call.elapsed()))
                .toList();
        boolean legible = inTime.stream().noneMatch(Keyed::spoilt);
        List<Boolean> lines = inTime.stream()
                .map(call -> call.strip().test().there())
                .distinct()
                .toList();
        return legible && inTime.size() >= RoundPlan.leastExperts() && lines.size() == 1
                ? Optional.of(lines.get(0))
                : Optional.empty();
    }

    private static boolean spoilt(Call call) {
        return !call.strip().control().there() || call.strip().lines().containsValue(Seen.DAMAGED);
    }
}
