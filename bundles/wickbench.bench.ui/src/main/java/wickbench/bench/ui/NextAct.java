package wickbench.bench.ui;

import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunPlanning.Planned;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;
import wickbench.reading.plan.PlannedStrip;
import wickbench.widgets.Meaning;
import wickbench.widgets.MinSec;

/**
 * What a pair of hands does next, in words.
 *
 * @param toStart the strip that starts next, if one waits
 */
record NextAct(String words, Meaning meaning, Optional<Integer> toStart) {

    static NextAct of(RunState run, Optional<Planned> plan, Moment now) {
        Optional<PlannedStrip> next = next(run, plan, now);
        Optional<Integer> toStart = next.map(
                        strip -> Integer.valueOf(strip.strip().name()))
                .or(() -> run.in(Phase.WAITING, now).stream()
                        .map(StripState::number)
                        .findFirst());
        return urgent(run, now, toStart).orElseGet(() -> calm(run, plan, next, toStart, now));
    }

    private static Optional<NextAct> urgent(RunState run, Moment now, Optional<Integer> toStart) {
        for (Phase phase : new Phase[] {Phase.OPEN, Phase.LOOKING, Phase.SECOND, Phase.MISSED}) {
            Optional<StripState> first = run.in(phase, now).stream().findFirst();
            if (first.isPresent()) {
                String left = MinSec.of(first.get().left(now));
                Meaning meaning =
                        phase == Phase.OPEN ? Meaning.ALARM : phase == Phase.MISSED ? Meaning.CAUTION : Meaning.NOTICE;
                return Optional.of(new NextAct(
                        FlowWords.get("act." + phase.code(), first.get().number(), left), meaning, toStart));
            }
        }
        return Optional.empty();
    }

    private static NextAct calm(
            RunState run, Optional<Planned> plan, Optional<PlannedStrip> next, Optional<Integer> toStart, Moment now) {
        if (toStart.isEmpty()) {
            String words = run.in(Phase.DEVELOPING, now).stream()
                    .min(Comparator.comparing(strip -> strip.left(now)))
                    .map(strip -> FlowWords.get("act.wait", strip.number(), MinSec.of(strip.left(now))))
                    .orElseGet(() -> FlowWords.get("act.over"));
            return new NextAct(words, Meaning.NEUTRAL, toStart);
        }
        if (next.isEmpty()) {
            return new NextAct(FlowWords.get("act.start", toStart.get()), Meaning.NOTICE, toStart);
        }
        Duration at = now.after(plan.orElseThrow().at()).span();
        Duration hands = next.get().dipStart().minus(at);
        Duration start = next.get().started().minus(at);
        if (hands.compareTo(Duration.ZERO) > 0) {
            return new NextAct(FlowWords.get("act.rest", toStart.get(), MinSec.of(hands)), Meaning.NEUTRAL, toStart);
        }
        return start.compareTo(Duration.ZERO) > 0
                ? new NextAct(FlowWords.get("act.ready", toStart.get(), MinSec.of(start)), Meaning.NOTICE, toStart)
                : new NextAct(FlowWords.get("act.start", toStart.get()), Meaning.NOTICE, toStart);
    }

    private static Optional<PlannedStrip> next(RunState run, Optional<Planned> plan, Moment now) {
        return plan.stream()
                .flatMap(some -> some.plan().strips().stream())
                .filter(strip -> run.strip(Integer.parseInt(strip.strip().name()))
                        .filter(state -> state.phase(now) == Phase.WAITING)
                        .isPresent())
                .min(Comparator.comparing(PlannedStrip::started));
    }
}
