package wickbench.training.face;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import wickbench.training.Design;
import wickbench.training.PassRule;
import wickbench.training.Rounds;
import wickbench.training.Skill;
import wickbench.training.StripClass;

/** What a round is made of and when it is passed, as options. */
final class DesignOptions {
    @Option(names = "--blanks", paramLabel = "N")
    int blanks;

    @Option(names = "--near", paramLabel = "N")
    int near;

    @Option(names = "--clear", paramLabel = "N")
    int clear;

    @Option(names = "--hook", paramLabel = "N")
    int hook;

    @Option(names = "--invalid", paramLabel = "N")
    int invalid;

    @Option(names = "--near-missed", paramLabel = "N")
    Integer nearMissed;

    @Option(names = "--clear-missed", paramLabel = "N")
    Integer clearMissed;

    @Option(names = "--false-alarms", paramLabel = "N")
    Integer falseAlarms;

    @Option(names = "--invalid-missed", paramLabel = "N")
    Integer invalidMissed;

    @Option(names = "--outside-window", paramLabel = "N")
    Integer outsideWindow;

    @Option(names = "--poor", paramLabel = "P")
    Double poorNear;

    @Option(names = "--good", paramLabel = "P")
    Double goodNear;

    Map<StripClass, Integer> counts() {
        Map<StripClass, Integer> counts = new EnumMap<>(StripClass.class);
        counts.put(StripClass.BLANK, blanks);
        counts.put(StripClass.NEAR_LIMIT, near);
        counts.put(StripClass.CLEAR, clear);
        counts.put(StripClass.HOOK, hook);
        counts.put(StripClass.INVALID, invalid);
        return counts;
    }

    Design design(Map<StripClass, Integer> counts, Rounds rounds) {
        return Typed.of("strips", "", none -> {
            Design checked = new Design(counts, new PassRule(0, 0, 0, 0, 0));
            PassRule suggested = rounds.suggested(checked.strips(), poor());
            return new Design(counts, said(suggested));
        });
    }

    private PassRule said(PassRule suggested) {
        return new PassRule(
                or(nearMissed, suggested.nearMissed()),
                or(clearMissed, suggested.clearMissed()),
                or(falseAlarms, suggested.falseAlarms()),
                or(invalidMissed, suggested.invalidMissed()),
                or(outsideWindow, suggested.outsideWindow()));
    }

    private static int or(Integer said, int otherwise) {
        return Optional.ofNullable(said).orElse(otherwise);
    }

    Skill poor() {
        return near(Skill.POOR, "--poor", poorNear);
    }

    Skill good() {
        return near(Skill.GOOD, "--good", goodNear);
    }

    private static Skill near(Skill skill, String option, Double said) {
        return said == null ? skill : Typed.of(option, "", none -> skill.withNear(said));
    }
}
