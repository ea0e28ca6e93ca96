package wickbench.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.EntryRef;
import wickbench.api.progress.Progress;

/**
 * The results of this site.
 *
 * <p>A result is one strip as it stands now. The newest statement of it counts, with one exception: once a statement showed
 * allergen or a sign of it, no later one that does not is shown in its place, and the result stays held. Every method asks the
 * index, so none may be called on the thread that paints.
 */
@ProviderType
public interface Results {

    /**
     * Reads results in order.
     *
     * <p>Pages follow one another by key, so one far down costs no more than the first.
     *
     * @param after the last row of the page before; empty for the first page
     * @param size how many at most
     */
    ResultPage page(Filter filter, Sort sort, Optional<ResultRow> after, int size);

    long count(Filter filter);

    /**
     * Counts by week of the site's time zone, from the first with a result to the last, none between left out.
     *
     * <p>The strips of run controls are not counted: a low positive is meant to be positive.
     */
    List<Week> weekly(Filter filter);

    /** Returns the result that the entry with this id recorded or corrected. */
    Optional<ResultDetail> find(UUID entry);

    /** Returns the result that this entry recorded or corrected. */
    Optional<ResultDetail> find(EntryRef entry);

    /** Counts results of which a review is waited for since before an instant. */
    long unreviewedBefore(Instant since);

    /** Returns the last valid Negative of the same point by the same method before a result; not one in doubt or diluted. */
    Optional<ResultRow> lastGood(ResultRow before);

    /**
     * Returns the batches that results of a line name, by when they were first tested.
     *
     * @param after strips started later than that; empty for ever
     * @param until strips started by then; empty for up to now
     */
    List<String> batches(String line, Optional<Instant> after, Optional<Instant> until);

    /**
     * Returns, in words, what is not as it was recorded: the journal against its seals, or any row of the index against the journal.
     *
     * <p>Takes as long as making the index anew, the first time since its file was opened.
     *
     * @param progress may stop it, and then that is what is returned
     */
    List<String> falsified(Progress progress);

    /**
     * Refuses to let results go out that are not as recorded.
     *
     * @throws wickbench.api.check.Refusal {@code ledger.differs} when the journal contradicts its seals, or one of the rows says
     *     otherwise than the journal; a row that was taken out is found by {@link #falsified} alone
     */
    void refuseFalsified(Filter filter);

    /** Returns entries that a newer version of this program wrote, and that are therefore in no result. */
    List<Unread> unread();
}
