package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import wickbench.api.owed.OwedItem;
import wickbench.ledger.ResultRow;

/**
 * A result with all that was decided and is owed because of it.
 *
 * @param lastGood the last valid Negative before it of the same point by the same method; empty where there is none
 * @param first how product stands about which nothing was decided
 * @param products what it is about: its own batch, those made on its line since the last good result, and those that decisions name
 * @param cause the root cause, as last stated
 * @param owed what it owes or owed, with the entries that answered it
 * @param taken every decision, oldest first
 * @param outside what outside laboratories reported of it
 * @param clash stations decided otherwise without knowing of one another, and nobody has settled it; product stands held
 */
public record Case(
        ResultRow result,
        Optional<LastGood> lastGood,
        ProductState first,
        List<Product> products,
        Optional<String> cause,
        List<OwedItem> owed,
        List<Taken> taken,
        List<Outside> outside,
        boolean clash) {
    public Case {
        products = List.copyOf(products);
        owed = List.copyOf(owed);
        taken = List.copyOf(taken);
        outside = List.copyOf(outside);
    }

    /** Tells whether something is left to decide or to do. */
    public boolean open() {
        return clash
                || owed.stream().anyMatch(item -> !item.done())
                || products.stream().anyMatch(each -> !each.state().ended() && each.state() != ProductState.FREE);
    }
}
