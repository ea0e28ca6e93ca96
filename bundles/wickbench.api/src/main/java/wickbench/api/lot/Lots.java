package wickbench.api.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The kit lots of this site, as the stock bundle knows them; absent where that is not installed. */
@ProviderType
public interface Lots {

    /** Returns what was known of a lot at an instant. */
    Optional<LotFacts> asOf(LotId lot, Instant instant);

    /** Returns the lots fit for use with a kit at an instant, first expired first. */
    List<LotFacts> fitFor(String kit, Instant instant);
}
