package wickbench.stock;

import java.util.Optional;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;

/**
 * An entry that says something of a lot which cannot follow from what went before.
 *
 * @param code what: a move, or {@code kit}, {@code not-received}, {@code strips}
 * @param claimed what it claims
 * @param stands what stands against it
 */
public record Clash(EntryRef entry, String code, String claimed, String stands) {
    private static final String SUBJECT = "lot:";

    /** Returns the subject of decisions on a lot, as stations that decide differently name it. */
    public static String subject(LotId lot) {
        return SUBJECT + lot.value();
    }

    /** Returns the lot that decisions are about; empty where the subject is no lot. */
    public static Optional<LotId> lot(String subject) {
        return subject.startsWith(SUBJECT)
                ? Optional.of(new LotId(subject.substring(SUBJECT.length())))
                : Optional.empty();
    }
}
