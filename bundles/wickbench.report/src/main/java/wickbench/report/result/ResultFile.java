package wickbench.report.result;

import java.util.Comparator;
import java.util.List;
import wickbench.api.journal.Entry;

/**
 * All that the journal holds of one result.
 *
 * @param statements the first one and its corrections, in the order in which they were written; at least one
 * @param others later entries that name the result, for example a review
 */
record ResultFile(List<Statement> statements, List<Entry> others) {
    /** Entries of several stations have no other order. */
    static final Comparator<Entry> ORDER = Comparator.comparing(Entry::at)
            .thenComparing(entry -> entry.ref().station())
            .thenComparing(entry -> entry.ref().seq());

    ResultFile {
        statements = statements.stream()
                .sorted(Comparator.comparing(Statement::entry, ORDER))
                .toList();
        others = others.stream().sorted(ORDER).toList();
    }

    Statement first() {
        return statements.get(0);
    }

    /** Returns the statement that counts now. */
    Statement last() {
        return statements.get(statements.size() - 1);
    }

    boolean corrected() {
        return statements.size() > 1;
    }
}
