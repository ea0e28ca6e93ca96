package wickbench.ledger.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.ledger.Filter;
import wickbench.reading.OutcomeWords;

/** Says in words which results pass a filter, as titles and records of what was handed out need it. */
public final class FilterText {
    private FilterText() {}

    /** Returns for example {@code from 2026-03-01, to 2026-03-31, line L1}; without conditions, that they are all. */
    public static String of(Filter filter) {
        List<String> parts = new ArrayList<>();
        add(parts, "from", filter.from());
        add(parts, "to", filter.to());
        add(parts, "outcome", filter.outcome().map(OutcomeWords::text));
        add(parts, "place", filter.place());
        add(parts, "line", filter.line());
        add(parts, "batch", filter.batch());
        add(parts, "method", filter.method());
        add(parts, "target", filter.target());
        add(parts, "operator", filter.operator());
        add(parts, "lot", filter.lot());
        add(parts, "text", filter.text());
        flag(parts, "held", filter.held());
        flag(parts, "in-doubt", filter.inDoubt());
        flag(parts, "unreviewed", filter.unreviewed());
        return parts.isEmpty() ? PapersWords.get("filter.all") : String.join(", ", parts);
    }

    private static void add(List<String> parts, String key, Optional<?> value) {
        value.ifPresent(known -> parts.add(PapersWords.get("filter." + key, known.toString())));
    }

    private static void flag(List<String> parts, String key, boolean only) {
        if (only) {
            parts.add(PapersWords.get("filter." + key));
        }
    }
}
