package wickbench.bench.run;

import java.time.Instant;
import java.util.Optional;

/**
 * The clean before a sample was taken.
 *
 * @param procedure which procedure, by the site's name
 * @param by who cleaned, in the words of the site
 * @param ended when it ended
 */
public record Clean(Optional<String> procedure, Optional<String> by, Optional<Instant> ended) {
    public boolean stated() {
        return procedure.isPresent() || by.isPresent() || ended.isPresent();
    }
}
