package wickbench.ledger.services;

import java.util.Optional;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.trend.Trending;

/** The doors behind the commands that act on results; what is in doubt is decided on where the bench is. */
record Doors(
        Correcting correcting,
        Optional<DoubtDecision> doubts,
        Reviewing reviewing,
        Deciding deciding,
        Releasing releasing,
        Packing packing,
        Trending trending) {}
