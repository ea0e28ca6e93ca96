package wickbench.api.index;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;

/** One row of an answer; columns go by name. A plain getter of a NULL column throws {@link IllegalStateException}. */
@ProviderType
public interface Row {
    String text(String column);

    Optional<String> optionalText(String column);

    long whole(String column);

    Optional<Long> optionalWhole(String column);

    BigDecimal decimal(String column);

    Optional<BigDecimal> optionalDecimal(String column);

    boolean flag(String column);

    UUID uuid(String column);

    Instant instant(String column);

    Optional<Instant> optionalInstant(String column);

    Optional<LocalDate> optionalDate(String column);
}
