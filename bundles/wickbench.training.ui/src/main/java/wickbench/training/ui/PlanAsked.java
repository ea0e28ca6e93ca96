package wickbench.training.ui;

import java.time.Duration;
import java.util.List;
import wickbench.api.method.Format;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.training.Design;
import wickbench.training.PanelStrip;
import wickbench.training.RoundPlan;

/** What was asked of a round, everything but its design. */
record PlanAsked(
        String id,
        MethodId method,
        Format format,
        Duration develop,
        Duration window,
        List<PersonId> readers,
        List<PersonId> experts,
        List<PanelStrip> panel,
        String keyMaker) {
    RoundPlan plan(Design design) {
        return new RoundPlan(id, method, format, develop, window, design, readers, experts, panel, keyMaker);
    }
}
