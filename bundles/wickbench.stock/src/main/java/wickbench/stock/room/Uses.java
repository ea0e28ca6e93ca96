package wickbench.stock.room;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Route;

/** How many strips of one lot were read. */
interface Uses {

    /** Counts by route, from just after an instant up to another, which is included. */
    Map<Route, Long> between(Instant after, Instant upTo);

    /** Returns the newest strips up to an instant, the newest first. */
    List<Gone> newest(Instant upTo, long most);

    /** A strip that went, by which entry and when. */
    record Gone(EntryRef entry, Instant at) {}
}
