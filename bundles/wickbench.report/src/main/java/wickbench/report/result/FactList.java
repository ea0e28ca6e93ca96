package wickbench.report.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.report.Section.Fact;
import wickbench.api.report.Section.Facts;
import wickbench.report.ReportWords;

/** Gathers facts under the names that this bundle keeps for them; what was not stated is left out or said so. */
final class FactList {
    private final List<Fact> facts = new ArrayList<>();

    FactList add(String key, Object value) {
        facts.add(new Fact(ReportWords.get("fact." + key), value.toString()));
        return this;
    }

    FactList addIf(String key, Optional<?> value) {
        value.ifPresent(known -> add(key, known));
        return this;
    }

    FactList addOrUnstated(String key, Optional<?> value) {
        return add(key, value.<Object>map(known -> known).orElseGet(() -> ReportWords.get("fact.not-stated")));
    }

    Facts facts() {
        return new Facts(facts);
    }
}
