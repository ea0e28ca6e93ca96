package wickbench.api.reading;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.gate.Question;

/** What the bench says before a strip is started and before it is recorded; nothing is kept. Never on the screen's thread. */
@ProviderType
public interface RunAdvice {

    /**
     * Asks every gate, as of the instant of the question: the method first, then the neighbours by name, absent ones too.
     *
     * <p>What is refused may not be started; a reading that was made all the same is recorded, with its findings.
     */
    List<Clearance> gates(Question question);

    /**
     * Returns the run controls that the site profile in force asks for and that these strips lack, should they be started now.
     *
     * <p>A run without them may be started, and owes them afterwards.
     */
    List<DueControl> controlsDue(List<Reading> run);

    /** Returns the share of strips that look negative and get a second reader, from 0 to 1, as the site profile in force says. */
    BigDecimal secondReaderShare();

    /**
     * Tells whether a strip is drawn for a second reader, should it look negative.
     *
     * <p>Nobody can tell beforehand, everybody can reckon it afterwards: it follows from the strip's id by a hash.
     *
     * @param strip an id of its own, such as the entry's or one drawn by chance when the run was planned
     */
    boolean drawn(UUID strip);

    /**
     * Returns why a second reader, blind to the first, is asked for; empty when none is.
     *
     * @param drawn as {@link #drawn} said
     */
    Optional<SecondLook> secondLook(Strip seen, boolean drawn);
}
