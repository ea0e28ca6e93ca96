package wickbench.api.gate;

import java.util.List;
import java.util.Map;

/** What a gate says. */
public sealed interface Answer {

    /** Returns who answered, or who would have. */
    String neighbour();

    /**
     * Nothing speaks against it.
     *
     * @param facts what the answer rests on, to be copied into the entry
     */
    record Cleared(String neighbour, Map<String, String> facts) implements Answer {
        public Cleared {
            facts = Map.copyOf(facts);
        }
    }

    /** At least one rule says no. */
    record Refused(String neighbour, Map<String, String> facts, List<Reason> reasons) implements Answer {
        public Refused {
            facts = Map.copyOf(facts);
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Nobody was there to ask; never a silent yes.
     *
     * @param required whether the site profile in force at the start asks for this check, so that a Negative cannot stand without
     */
    record NotChecked(String neighbour, boolean required) implements Answer {
        /** Nobody was there, and the site does not insist. */
        public NotChecked(String neighbour) {
            this(neighbour, false);
        }
    }

    /**
     * Why not.
     *
     * @param code the rule, also a finding of the reading: {@code lot.expired}, {@code operator.lapsed}, …
     * @param measured what was found
     * @param asked what the rule asks for
     */
    record Reason(String code, String measured, String asked) {}
}
