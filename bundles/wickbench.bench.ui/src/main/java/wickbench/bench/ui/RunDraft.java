package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** Returns it, if any of it would be missed. */
    static Optional<RunDraft> of(Map<Item, String> texts, Map<String, String> preChecks, List<RunStrip> strips) {
        boolean typed = texts.values().stream().anyMatch(text -> !text.isBlank());
        return typed || !strips.isEmpty() ? Optional.of(new RunDraft(texts, preChecks, strips)) : Optional.empty();
    }
}
