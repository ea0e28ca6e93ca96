package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lines under headings. */
final class Lines {
    private final List<String> all = new ArrayList<>();

    List<String> all() {
        return List.copyOf(all);
    }

    /** Adds a heading, after a blank line. */
    void head(String key) {
        all.add("");
        all.add(LedgerWords.get(key));
    }

    void add(String line) {
        all.add("  " + line);
    }

    /** Adds what belongs to the line before. */
    void below(String line) {
        all.add("    " + line);
    }

    void fact(String key, String value) {
        add(LedgerWords.get(key) + ": " + value);
    }

    void perhaps(String key, Optional<String> value) {
        value.ifPresent(some -> fact(key, some));
    }
}
