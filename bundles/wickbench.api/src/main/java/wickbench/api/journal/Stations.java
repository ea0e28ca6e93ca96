package wickbench.api.journal;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The other stations of a site, with which this one exchanges journals through a shared folder.
 *
 * <p>While the home is open, what is recorded here goes to the folder and what others have put there comes in, within two seconds
 * where the folder answers. A station that cannot reach it works on.
 */
@ProviderType
public interface Stations {

    /** Returns the folder and how far each station is. */
    Sharing sharing();

    /**
     * Sets the shared folder, or none; kept in the settings of the home. An empty folder is made one to share; another is not.
     *
     * @throws wickbench.api.check.Refusal {@code share.none} when the folder is not there or is no shared folder,
     *     {@code share.simulated} in a home with a simulated clock
     */
    void share(Optional<Path> folder);

    /** Exchanges once, now, and returns how far each station is then. */
    Sharing exchange();
}
