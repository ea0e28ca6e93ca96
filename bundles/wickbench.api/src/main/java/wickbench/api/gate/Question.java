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
 * @param place where the sample was taken, by the site's name; empty where nobody has said yet
 * @param lotCheck whether the strip is read to check the lot, so that it may come before that check
 */
public record Question(
        MethodRef method,
        Route route,
        LotId lot,
        PersonId operator,
        Optional<PersonId> observer,
        boolean lotCheck,
        Instant at,
        Optional<String> place) {

    /** Asks before anybody has said where the sample is taken. */
    public Question(
            MethodRef method,
            Route route,
            LotId lot,
            PersonId operator,
            Optional<PersonId> observer,
            boolean lotCheck,
            Instant at) {
        this(method, route, lot, operator, observer, lotCheck, at, Optional.empty());
    }
}
