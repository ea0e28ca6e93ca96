package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.reading.Reading;
import wickbench.bench.run.Clean;

/**
 * What a form says once it is looked through.
 *
 * @param wrong what is wrong, to be said beside its field
 * @param wrongChecks the same of the sample's pre-checks
 * @param missing what is still needed, in words, in the order of the form
 * @param reading a strip that nobody has read yet; there when nothing is wrong or missing
 * @param clean the clean before the sample, where anything was stated
 */
record FormCheck(
        Map<Item, String> wrong,
        Map<String, String> wrongChecks,
        List<String> missing,
        Optional<Reading> reading,
        Optional<Clean> clean) {
    FormCheck {
        wrong = Map.copyOf(wrong);
        wrongChecks = Map.copyOf(wrongChecks);
        missing = List.copyOf(missing);
    }

    static FormCheck nothing() {
        return new FormCheck(Map.of(), Map.of(), List.of(), Optional.empty(), Optional.empty());
    }

    /** Returns what stands between the form and a strip, in words; empty when nothing does. */
    String needed() {
        if (!wrong.isEmpty() || !wrongChecks.isEmpty()) {
            List<String> all = new ArrayList<>(
                    wrong.keySet().stream().sorted().map(Item::words).toList());
            all.addAll(wrongChecks.keySet());
            return BenchUiWords.get("needed.right", String.join(", ", all));
        }
        return missing.isEmpty() ? "" : BenchUiWords.get("needed.missing", String.join(", ", missing));
    }
}
