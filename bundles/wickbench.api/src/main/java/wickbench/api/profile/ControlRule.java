package wickbench.api.profile;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.RunControl;
import wickbench.api.words.Coded;

/**
 * Which run controls a site asks for, of each kit and lot, and how often.
 *
 * <p>Stands in a profile as the member {@code run_controls}, which several bundles read.
 */
public record ControlRule(Map<RunControl, Often> due) {
    /** The member of a profile that holds it. */
    public static final String MEMBER = "run_controls";
    /** Nothing is asked for. */
    public static final ControlRule NONE = new ControlRule(Map.of());

    public ControlRule {
        due = Map.copyOf(due);
    }

    public Optional<Often> often(RunControl control) {
        return Optional.ofNullable(due.get(control));
    }

    /** Returns the member; empty where nothing is asked for. */
    public Optional<Json> json() {
        Json.Obj member = Json.object();
        for (RunControl control : RunControl.values()) {
            member = member.withText(control.code(), often(control).map(Coded::code));
        }
        return Optional.<Json>of(member).filter(any -> !due.isEmpty());
    }

    /** Reads the member, complaining there of what is wrong. */
    public static ControlRule in(Fields member) {
        Map<RunControl, Often> due = new EnumMap<>(RunControl.class);
        for (RunControl control : RunControl.values()) {
            member.optional(control.code(), code -> Coded.of(Often.class, code))
                    .ifPresent(often -> due.put(control, often));
        }
        return new ControlRule(due);
    }
}
