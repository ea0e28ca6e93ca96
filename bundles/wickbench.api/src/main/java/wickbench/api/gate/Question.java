package wickbench.api.gate;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;

/**
 * May this person run this method with this lot at this instant?
 *
 * @param observer an authorised observer who reads the strip, if one stands by
 * @param lotCheck whether the strip is read to check the lot, so that it may come before that check
 */
public record Question(
        MethodRef method,
        Route route,
        LotId lot,
        PersonId operator,
        Optional<PersonId> observer,
        boolean lotCheck,
        Instant at) {}
