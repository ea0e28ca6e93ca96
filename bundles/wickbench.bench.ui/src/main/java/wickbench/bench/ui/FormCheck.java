package wickbench.bench.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.reading.Reading;

/**
 * What a form says once it is looked through.
 *
 * @param wrong what is wrong, to be said beside its field
 * @param wrongChecks the same of the sample's pre-checks
 * @param missing what is still needed, in words, in the order of the form
 * @param reading there when nothing is wrong or missing
 */
record FormCheck(
        Map<Item, String> wrong, Map<String, String> wrongChecks, List<String> missing, Optional<Reading> reading) {
    FormCheck {
        wrong = Map.copyOf(wrong);
        wrongChecks = Map.copyOf(wrongChecks);
        missing = List.copyOf(missing);
    }
}
