package wickbench.bench.ui;

import java.util.HashMap;
import java.util.Map;

/**
 * What stands on the form, as typed.
 *
 * @param texts stripped; what is blank is not in it
 * @param preChecks what was measured of the sample, by the names that the method gives
 */
record Typed(Map<Item, String> texts, Map<String, String> preChecks) {
    Typed {
        texts = spoken(texts);
        preChecks = spoken(preChecks);
    }

    String text(Item item) {
        return texts.getOrDefault(item, "");
    }

    private static <K> Map<K, String> spoken(Map<K, String> typed) {
        Map<K, String> some = new HashMap<>();
        typed.forEach((key, text) -> {
            if (!text.isBlank()) {
                some.put(key, text.strip());
            }
        });
        return Map.copyOf(some);
    }
}
