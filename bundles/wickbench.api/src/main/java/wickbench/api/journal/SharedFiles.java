package wickbench.api.journal;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * A bundle's files beside the journal that every station needs, contributed as a service.
 *
 * <p>Each is named by the SHA-256 of its bytes, with an ending, is never changed, and is named by an entry. What stands in the home's folder goes to the share; what leaves
 * the home, as when a person is forgotten, leaves it there too. Files that other stations have are fetched when asked for.
 */
@ConsumerType
public interface SharedFiles {

    /** Returns the folder's name below the home. */
    String folder();

    /** Returns the files that entries name and that are not here, as paths below the folder with {@code /}. */
    List<String> wanted();
}
