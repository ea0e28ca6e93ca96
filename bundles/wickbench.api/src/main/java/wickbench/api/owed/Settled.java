package wickbench.api.owed;

import java.util.UUID;
import wickbench.api.reading.Owed;

/**
 * The body of {@code owed.settled}: an authorised person has decided on something owed.
 *
 * @param owes the entry that owes it
 * @param reason what was decided and why, in their words
 */
public record Settled(UUID owes, Owed owed, String reason) {
    public static final String KIND = "owed.settled";
    public static final int VERSION = 1;
}
