package wickbench.bench.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.check.Refusal;
import wickbench.api.method.LineRole;
import wickbench.bench.run.StripState.Answers;
import wickbench.bench.run.StripState.Preparation;

/** What a run becomes by what happens; a move that the rules do not know is refused and changes nothing. */
final class Moves {
    private Moves() {}

    /**
     * Returns the run after the event.
     *
     * @throws Refusal {@code run.no-such-strip}, {@code run.closed}, or {@code run.not-now} with the phase that the strip is in
     */
    static RunState apply(RunState run, Moment at, RunEvent event) {
        if (run.closed()) {
            throw new Refusal("run.closed", RunWords.get("refused.closed"));
        }
        if (event instanceof RunEvent.OfStrip ofStrip) {
            StripState strip = run.strip(ofStrip.strip())
                    .orElseThrow(() ->
                            new Refusal("run.no-such-strip", RunWords.get("refused.no-such-strip", ofStrip.strip())));
            return run.with(move(strip, at, ofStrip));
        }
        if (event instanceof RunEvent.Added added) {
            return run.plus(added.more().numbered(run.nextNumber()));
        }
        if (event instanceof RunEvent.ClockMoved moved) {
            return run.moved(moved.by());
        }
        if (event instanceof RunEvent.Resumed) {
            return run.resumedOnce();
        }
        if (event instanceof RunEvent.Closed) {
            return close(run, at);
        }
        throw new IllegalArgumentException("a run begins once: " + event);
    }

    private static RunState close(RunState run, Moment at) {
        List<Integer> open = run.strips().stream()
                .filter(strip -> !strip.phase(at).over())
                .map(StripState::number)
                .toList();
        if (!open.isEmpty()) {
            throw new Refusal("run.open-strips", RunWords.get("refused.open-strips", open));
        }
        return run.close();
    }

    private static StripState move(StripState strip, Moment at, RunEvent.OfStrip event) {
        Phase phase = strip.phase(at);
        if (event instanceof RunEvent.Shaking) {
            only(strip, phase, Phase.WAITING);
            return Changed.prepared(strip, new Preparation(Optional.of(at), Optional.empty()));
        }
        if (event instanceof RunEvent.Shaken) {
            only(strip, phase, Phase.WAITING);
            return shaken(strip, at);
        }
        if (event instanceof RunEvent.Started) {
            only(strip, phase, Phase.WAITING);
            return Changed.started(strip, Optional.of(at), strip.undone());
        }
        if (event instanceof RunEvent.Undone) {
            // once the window is open, taking the start back would be a way to lose a strip
            only(strip, phase, Phase.DEVELOPING);
            return Changed.started(
                    strip, Optional.empty(), and(strip.undone(), strip.started().orElseThrow()));
        }
        if (event instanceof RunEvent.Looked) {
            only(strip, phase, Phase.OPEN, Phase.MISSED);
            return Changed.looked(strip, at);
        }
        if (event instanceof RunEvent.Kept kept) {
            only(strip, phase, Phase.LOOKING);
            whole(strip, kept.lines().keySet());
            return Changed.kept(strip, new Answers(kept.by(), kept.lines()));
        }
        return later(strip, phase, event);
    }

    private static StripState later(StripState strip, Phase phase, RunEvent.OfStrip event) {
        if (event instanceof RunEvent.Second second) {
            only(strip, phase, Phase.SECOND, Phase.KEPT);
            return second(strip, second);
        }
        if (event instanceof RunEvent.NoSecond) {
            only(strip, phase, Phase.SECOND);
            return Changed.flags(strip, true, strip.lost(), strip.skipped(), strip.recorded());
        }
        if (event instanceof RunEvent.Lost) {
            only(strip, phase, Phase.MISSED);
            return Changed.flags(strip, strip.alone(), true, strip.skipped(), strip.recorded());
        }
        if (event instanceof RunEvent.Skipped) {
            only(strip, phase, Phase.WAITING);
            return Changed.flags(strip, strip.alone(), strip.lost(), true, strip.recorded());
        }
        if (event instanceof RunEvent.Recorded recorded) {
            only(strip, phase, Phase.KEPT);
            return Changed.flags(strip, strip.alone(), strip.lost(), strip.skipped(), Optional.of(recorded.reading()));
        }
        throw new IllegalStateException("not known: " + event);
    }

    private static StripState shaken(StripState strip, Moment at) {
        Preparation begun = strip.preparation();
        if (!begun.underWay()) {
            throw new Refusal("run.not-now", RunWords.get("refused.not-shaking", strip.number()));
        }
        return Changed.prepared(
                strip,
                new Preparation(
                        begun.from(), begun.from().map(from -> at.after(from).span())));
    }

    private static StripState second(StripState strip, RunEvent.Second second) {
        whole(strip, second.lines().keySet());
        if (strip.second().isPresent() || strip.kept().isEmpty()) {
            throw new Refusal("run.not-now", RunWords.get("refused.second-there", strip.number()));
        }
        if (strip.kept().orElseThrow().by().equals(second.by())) {
            throw new Refusal("run.same-reader", RunWords.get("refused.same-reader", second.by()));
        }
        return Changed.second(strip, new Answers(second.by(), second.lines()));
    }

    private static void only(StripState strip, Phase phase, Phase... allowed) {
        if (!List.of(allowed).contains(phase)) {
            throw new Refusal(
                    "run.not-now",
                    RunWords.get("refused.not-now", strip.number(), RunWords.get("phase." + phase.code())));
        }
    }

    private static void whole(StripState strip, Set<LineRole> answered) {
        if (!answered.equals(Set.copyOf(strip.strip().unread().strip().format().lines()))) {
            throw new Refusal("run.unanswered", RunWords.get("refused.unanswered", strip.number()));
        }
    }

    private static List<Moment> and(List<Moment> some, Moment more) {
        List<Moment> all = new ArrayList<>(some);
        all.add(more);
        return List.copyOf(all);
    }
}
