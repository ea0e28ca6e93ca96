package wickbench.training.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.training.Design;
import wickbench.training.PassRule;
import wickbench.training.Skill;
import wickbench.training.StripClass;

/**
 * A design as it is wanted.
 *
 * @param allowed mistakes of each kind that pass, in the order of {@link PassRule}; empty where the suggested number holds
 */
record Wanted(Map<StripClass, Integer> strips, List<Optional<Integer>> allowed) {
    Design design(TrainingDoors doors) {
        PassRule suggested = doors.blind().rounds().suggested(strips, Skill.POOR);
        return new Design(
                strips,
                new PassRule(
                        allowed.get(0).orElse(suggested.nearMissed()),
                        allowed.get(1).orElse(suggested.clearMissed()),
                        allowed.get(2).orElse(suggested.falseAlarms()),
                        allowed.get(3).orElse(suggested.invalidMissed()),
                        allowed.get(4).orElse(suggested.outsideWindow())));
    }
}
