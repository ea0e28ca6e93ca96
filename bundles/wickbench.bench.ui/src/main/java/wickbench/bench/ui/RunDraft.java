package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import wickbench.bench.run.RunStrip;

/**
 * A run that has not begun, as it stands on the page.
 *
 * @param texts what stands in the fields
 * @param preChecks what was measured of the sample, by the names that the method gives
 */
record RunDraft(Map<Item, String> texts, Map<String, String> preChecks, List<RunStrip> strips) {
    RunDraft {
        texts = Map.copyOf(texts);
        preChecks = Map.copyOf(preChecks);
        strips = List.copyOf(strips);
    }
}
