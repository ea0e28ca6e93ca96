package wickbench.ledger;

import java.time.Instant;
import wickbench.api.person.PersonId;

/** Who looked a result over, as it stands, and signed for it. */
public record Review(PersonId by, Instant at) {}
