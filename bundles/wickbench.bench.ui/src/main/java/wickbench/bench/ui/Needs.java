package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;

/** What stands between a strip and its record, in words. */
record Needs(FormCheck check, boolean signedIn) {
    String words() {
        if (!check.wrong().isEmpty() || !check.wrongChecks().isEmpty()) {
            return BenchUiWords.get("needed.right", wrongOnes());
        }
        if (!check.missing().isEmpty()) {
            return BenchUiWords.get("needed.missing", String.join(", ", check.missing()));
        }
        return BenchUiWords.get(signedIn ? "judging" : "needed.actor");
    }

    private String wrongOnes() {
        List<String> wrong = new ArrayList<>(
                check.wrong().keySet().stream().sorted().map(Item::words).toList());
        wrong.addAll(check.wrongChecks().keySet());
        return String.join(", ", wrong);
    }
}
