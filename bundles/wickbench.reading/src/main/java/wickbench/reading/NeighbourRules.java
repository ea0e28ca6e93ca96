package wickbench.reading;

import java.util.Set;
import java.util.stream.Stream;
import wickbench.api.gate.Answer;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Reading;

/** What the neighbours said as of the start, and what the run's control says. */
final class NeighbourRules {
    /** What an authorised observer's reading makes good. */
    private static final Set<String> OBSERVABLE = Set.of("operator.not-authorised", "operator.lapsed");

    /**
     * To be minded, but takes nothing from a strip: a count that was wrong, equipment to be calibrated, an insert to be compared, a
     * method that nobody has shown to work here, or on this surface.
     */
    private static final Set<String> MINDED = Set.of(
            "lot.none-left",
            "lot.other-insert",
            "equipment.overdue",
            "method.not-verified",
            "method.not-verified-here");

    private NeighbourRules() {}

    static Stream<Finding> refused(Case test) {
        return answers(test, Answer.Refused.class).flatMap(answer -> refused(answer, test.reading()));
    }

    static Stream<Finding> notChecked(Case test) {
        return answers(test, Answer.NotChecked.class).map(NeighbourRules::notChecked);
    }

    private static Finding notChecked(Answer.NotChecked answer) {
        String rule = answer.neighbour() + "-not-checked";
        return answer.required()
                ? Rule.bars(rule, "not checked", answer.neighbour())
                : Rule.caution(rule, "not checked", answer.neighbour());
    }

    static Stream<Finding> controlFailed(Case test) {
        return test.around().controlFailed()
                ? Stream.of(Rule.bars("control.failed", "low positive not positive", "positive"))
                : Stream.empty();
    }

    private static Stream<Finding> refused(Answer.Refused answer, Reading reading) {
        if (answer.reasons().isEmpty()) {
            return Stream.of(Rule.bars(answer.neighbour() + "-refused", "refused", "cleared"));
        }
        return answer.reasons().stream().map(reason -> finding(reason, reading));
    }

    private static Finding finding(Answer.Reason reason, Reading reading) {
        return onlyCautions(reason.code(), reading.observer().isPresent())
                ? Rule.caution(reason.code(), reason.measured(), reason.asked())
                : Rule.bars(reason.code(), reason.measured(), reason.asked());
    }

    /** Tells whether a reason takes nothing from a strip. */
    static boolean onlyCautions(String code, boolean observed) {
        return MINDED.contains(code) || observed && OBSERVABLE.contains(code);
    }

    private static <A extends Answer> Stream<A> answers(Case test, Class<A> type) {
        return test.around().answers().stream().filter(type::isInstance).map(type::cast);
    }
}
