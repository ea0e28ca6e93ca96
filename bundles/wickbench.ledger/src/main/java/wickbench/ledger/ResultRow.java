package wickbench.ledger;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Severity;

/**
 * One result as it stands now.
 *
 * @param id of the entry that recorded it first; the result's identity
 * @param ref that entry
 * @param recorded when that entry was written
 * @param recordedBy who wrote it
 * @param happened when the strip was started, or else read, or else recorded; lists are in this order
 * @param target what the method detects
 * @param sign the strip proves nothing but shows a sign of allergen
 * @param held a statement of it showed allergen or a sign of it
 * @param inDoubt a Negative that something put in doubt, and nobody has decided whether it stands
 * @param findings how many rules had something to say
 * @param worst the gravest of them
 * @param dilution beyond the method's own steps; 1 is undiluted
 * @param sheet the file from which it was typed
 * @param corrections how many statements followed the first
 * @param corrected whether it stands by one of them, which asks for a signature
 * @param signed who signed the statement by which it stands; empty when nobody did
 * @param stands the entry of the statement by which it stands
 * @param waits since when a review of it was or is waited for: recorded, or corrected after a review
 * @param reviewed who reviewed that statement first; empty while nobody has
 */
public record ResultRow(
        UUID id,
        EntryRef ref,
        Instant recorded,
        PersonId recordedBy,
        Instant happened,
        String sample,
        String place,
        Optional<String> line,
        Optional<String> batch,
        Optional<Reason> reason,
        Route route,
        MethodRef method,
        String target,
        LotId lot,
        PersonId operator,
        Optional<Instant> started,
        Optional<Instant> read,
        Outcome outcome,
        boolean sign,
        boolean held,
        boolean inDoubt,
        long findings,
        Optional<Severity> worst,
        Optional<RunControl> control,
        BigDecimal dilution,
        Optional<String> sheet,
        long corrections,
        boolean corrected,
        Optional<Signed> signed,
        UUID stands,
        Instant waits,
        Optional<Review> reviewed) {}
