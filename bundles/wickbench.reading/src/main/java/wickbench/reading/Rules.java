package wickbench.reading;

import java.util.List;
import wickbench.api.reading.Finding;

/** The rules that every reading meets, in the order in which findings are told. */
final class Rules {
    private static final List<Rule> ALL = List.of(
            LineRules::controlNotSeen,
            LineRules::damaged,
            TimeRules::notStated,
            TimeRules::readEarly,
            TimeRules::readLate,
            PreparationRules::warmUpShort,
            PreparationRules::shakeShort,
            PreparationRules::extractOld,
            SampleRules::preChecks,
            SampleRules::visiblySoiled,
            NeighbourRules::refused,
            NeighbourRules::controlFailed,
            LineRules::faintCompetitive,
            LineRules::readersDisagree,
            NeighbourRules::notChecked);

    private Rules() {}

    static List<Finding> look(Case test) {
        return ALL.stream().flatMap(rule -> rule.look(test)).toList();
    }
}
