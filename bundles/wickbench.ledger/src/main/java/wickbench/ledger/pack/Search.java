package wickbench.ledger.pack;

import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;

/** Reads results and journals to the end, telling a watcher how far it is. */
record Search(Results results, Journal journal, Progress progress) {
    private static final int PAGE = 1000;
    private static final int TOLD_EACH = 500;

    /** Finds all entries that belong to the results which pass a filter; refused when none does. */
    Chosen belonging(Filter filter) {
        Chosen chosen = new Chosen();
        if (results(filter, chosen::result) == 0) {
            throw new Refusal("pack.nothing", PackWords.get("pack.nothing"));
        }
        // what names an entry may stand before it, in the journal of another station
        boolean[] news = {true};
        while (news[0]) {
            news[0] = false;
            entries(entry -> news[0] |= chosen.take(entry));
        }
        return chosen;
    }

    /** Hands over every entry that is here, a station after the other. */
    void entries(Consumer<Entry> reader) {
        long all = journal.stations().stream().mapToLong(journal::size).sum();
        long[] done = {0};
        for (StationId station : journal.stations()) {
            journal.read(station, 0, entry -> {
                reader.accept(entry);
                done[0]++;
                tell(done[0], Math.max(all, done[0]));
                return true;
            });
        }
    }

    private void tell(long done, long all) {
        if (done % TOLD_EACH == 0 && !progress.at(done, all)) {
            throw new Refusal("pack.stopped", PackWords.get("pack.stopped"));
        }
    }

    private long results(Filter filter, Consumer<ResultRow> reader) {
        long count = 0;
        Optional<ResultRow> after = Optional.empty();
        boolean more = true;
        while (more) {
            ResultPage page = results.page(filter, Sort.NEWEST_FIRST, after, PAGE);
            page.rows().forEach(reader);
            count += page.rows().size();
            after = page.rows().stream().reduce((first, second) -> second);
            more = page.more();
        }
        return count;
    }
}
