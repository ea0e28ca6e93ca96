package wickbench.stock;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;

/**
 * A strip of a lot that was read, as the result stands.
 *
 * @param result the result's id
 * @param ref the entry that recorded it first
 * @param taken when it was started, or else read, or else recorded
 * @param control {@code blank} or {@code low-positive} for a strip that checks a run or a lot
 * @param lotCheck whether it was read to check the lot
 */
public record Use(
        UUID result,
        EntryRef ref,
        LotId lot,
        String kit,
        String method,
        Instant taken,
        String sample,
        String place,
        Optional<String> line,
        Optional<String> batch,
        PersonId operator,
        Outcome outcome,
        boolean sign,
        Optional<String> control,
        boolean lotCheck) {}
