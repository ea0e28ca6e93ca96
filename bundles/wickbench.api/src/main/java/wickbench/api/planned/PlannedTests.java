package wickbench.api.planned;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Knows the samples of what is due; reads the index, so never asked on the screen's thread. */
@ConsumerType
@FunctionalInterface
public interface PlannedTests {

    /**
     * Returns what is still to be sampled of something due; empty when nothing of it is, or when it is not known here.
     *
     * @param key as the page that lists it names it
     */
    List<PlannedTest> of(String key);
}
