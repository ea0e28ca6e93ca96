package wickbench.training;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Strip;

/** People who play a round: what they see follows from what a strip is. */
public final class Played {
    public static final PersonId EXPERT = new PersonId("ex-1");
    public static final PersonId EXPERT_2 = new PersonId("ex-2");
    public static final Duration DEVELOP = Duration.ofMinutes(5);
    public static final Duration WINDOW = Duration.ofMinutes(1);

    private Played() {}

    public static Design design(int blanks, int near, int clear, int hook, int invalid, PassRule rule) {
        return new Design(
                Map.of(
                        StripClass.BLANK, blanks,
                        StripClass.NEAR_LIMIT, near,
                        StripClass.CLEAR, clear,
                        StripClass.HOOK, hook,
                        StripClass.INVALID, invalid),
                rule);
    }

    public static RoundPlan plan(String id, Design design, List<PersonId> readers, List<PanelStrip> panel) {
        return new RoundPlan(
                id,
                TrainingHome.METHOD,
                Format.SANDWICH_HOOK,
                DEVELOP,
                WINDOW,
                design,
                readers,
                panel.isEmpty() ? List.of(EXPERT, EXPERT_2) : List.of(),
                panel,
                "prepared by the laboratory from a reference food, diluted");
    }

    /** Returns what somebody calls who sees every line that is there; near-limit strips as said. */
    public static List<Call> calls(
            Round round, RoundKey key, Instant started, Function<RoundKey.Sealed, Boolean> nearSeen) {
        List<Call> calls = new ArrayList<>();
        for (RoundKey.Sealed strip : key.strips()) {
            calls.add(call(round, strip, nearSeen.apply(strip), started, DEVELOP.plusSeconds(20)));
        }
        return calls;
    }

    public static Call call(Round round, RoundKey.Sealed strip, boolean nearSeen, Instant started, Duration elapsed) {
        Strip seen = strip(round.plan().format(), strip.kind(), nearSeen);
        return Call.ofLines(strip.code(), seen, Optional.of(started), Optional.of(started.plus(elapsed)));
    }

    public static Strip strip(Format format, StripClass kind, boolean nearSeen) {
        boolean test = switch (kind) {
            case BLANK, INVALID -> false;
            case CLEAR, HOOK -> true;
            case NEAR_LIMIT -> nearSeen;
        };
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        lines.put(LineRole.CONTROL, kind == StripClass.INVALID ? Seen.NOT_SEEN : Seen.SEEN);
        lines.put(LineRole.TEST, test ? Seen.FAINT : Seen.NOT_SEEN);
        if (format == Format.SANDWICH_HOOK) {
            lines.put(LineRole.HOOK, kind == StripClass.HOOK ? Seen.NOT_SEEN : Seen.SEEN);
        }
        return new Strip(format, lines);
    }
}
