package wickbench.reading;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Often;
import wickbench.api.reading.DueControl;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;

/** Which run controls a run still lacks by the site's rule. */
public final class DueControls {
    private DueControls() {}

    /**
     * Returns the controls that are asked for and are not among the strips, in the order of the strips.
     *
     * @param ranToday tells whether a control was run on this day of the site
     */
    public static List<DueControl> of(ControlRule rule, List<Reading> run, Predicate<DueControl> ranToday) {
        Set<DueControl> there = new LinkedHashSet<>();
        Set<DueControl> due = new LinkedHashSet<>();
        for (Reading strip : run) {
            strip.sample().control().ifPresent(control -> there.add(of(control, strip)));
            boolean sample = strip.sample().control().isEmpty()
                    && !strip.sample().reason().equals(Optional.of(Reason.LOT_CHECK));
            for (RunControl control : RunControl.values()) {
                if (sample && rule.often(control).isPresent()) {
                    due.add(of(control, strip));
                }
            }
        }
        due.removeAll(there);
        due.removeIf(one -> rule.often(one.control()).equals(Optional.of(Often.DAY)) && ranToday.test(one));
        return List.copyOf(due);
    }

    private static DueControl of(RunControl control, Reading strip) {
        return new DueControl(control, strip.method(), strip.lot());
    }
}
