package wickbench.reading;

import java.util.List;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Answer.Reason;
import wickbench.api.reading.Clearance;
import wickbench.api.reading.Clearance.State;
import wickbench.api.words.Words;

/** What a neighbour's answer means before a strip is started. */
public final class Clearances {
    private static final String NOT_CHECKED = "-not-checked";

    private Clearances() {}

    /** Weighs an answer by the rules by which a reading would be judged: what would bar a Negative refuses the start. */
    public static Clearance of(Answer answer, boolean observed) {
        if (answer instanceof Answer.Refused refused) {
            return refused(refused, observed);
        }
        if (answer instanceof Answer.NotChecked absent) {
            Reason reason = new Reason(absent.neighbour() + NOT_CHECKED, "not checked", absent.neighbour());
            return new Clearance(
                    absent.neighbour(), absent.required() ? State.REFUSED : State.NOT_CHECKED, List.of(reason));
        }
        return new Clearance(answer.neighbour(), State.CLEARED, List.of());
    }

    private static Clearance refused(Answer.Refused refused, boolean observed) {
        boolean minded = !refused.reasons().isEmpty()
                && refused.reasons().stream().allMatch(reason -> NeighbourRules.onlyCautions(reason.code(), observed));
        return new Clearance(refused.neighbour(), minded ? State.CAUTION : State.REFUSED, refused.reasons());
    }

    /** Returns what a person can do about a reason, in the user's language. */
    public static String toDo(Reason reason) {
        Words words = Words.of(Clearances.class, "advice");
        String key = "todo." + reason.code();
        String general = reason.code().endsWith(NOT_CHECKED) ? "todo.not-checked" : "todo.other";
        return words.get(words.has(key) ? key : general, reason.measured(), reason.asked());
    }
}
