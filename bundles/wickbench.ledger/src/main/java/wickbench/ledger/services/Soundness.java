package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.index.IndexVerification;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.ledger.ResultRow;

/**
 * Whether what is about to leave the house, as product or on paper, is what was recorded.
 *
 * <p>The journal is held against its seals each time, for its files are open to other programs; the index once for each opening,
 * for nobody else can write to its file meanwhile.
 */
record Soundness(Index index, Journal journal) {
    static final String DIFFERS = "ledger.differs";

    /** Returns, in words, what does not hold of everything that is here; empty when all does. */
    List<String> against(Progress progress) {
        List<String> against = new ArrayList<>(journal(progress).stream().toList());
        if (against.isEmpty()) {
            IndexVerification rows = index.assured(progress);
            if (!rows.complete()) {
                against.add(LedgerWords.get("sound.stopped"));
            } else if (!rows.holds()) {
                against.add(LedgerWords.get("sound.index", rows.differences().size()));
            }
        }
        return against;
    }

    /**
     * Lets rows pass that are what the journal says.
     *
     * @param asRecorded tells of one row whether it is
     * @throws Refusal {@code ledger.differs} where the journal or one of the rows is not
     */
    void refuseOthers(Iterable<ResultRow> rows, Predicate<ResultRow> asRecorded) {
        journal(Progress.NONE).ifPresent(why -> {
            throw new Refusal(DIFFERS, why);
        });
        for (ResultRow row : rows) {
            if (!asRecorded.test(row)) {
                throw new Refusal(DIFFERS, LedgerWords.get("sound.row", row.sample(), row.place()));
            }
        }
    }

    private Optional<String> journal(Progress progress) {
        Verification whole = journal.verify(progress);
        if (!whole.complete()) {
            return Optional.of(LedgerWords.get("sound.stopped"));
        }
        return whole.findings().stream()
                .findFirst()
                .map(first -> LedgerWords.get("sound.journal", whole.findings().size(), first.where(), first.text()));
    }
}
