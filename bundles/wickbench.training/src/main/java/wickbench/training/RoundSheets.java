package wickbench.training;

import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The sheets of a blind round: what readers fill in, what strips are labelled by, what a panel holds.
 *
 * <p>A file is read and written whole or not at all. Each method throws {@link wickbench.api.check.BadInput} when a file cannot be
 * read or written, or says what cannot be.
 */
@ProviderType
public interface RoundSheets {

    /** Reads a filled-in sheet: a row a strip, in the order of the round; one in another order is refused. */
    List<Call> calls(Round round, Path file);

    /** Writes the sheet with its codes, to be filled in. */
    void blank(Round round, Path out);

    /** Writes the list by which strips are prepared and labelled; it holds the key. */
    void labels(RoundKey key, Path out);

    /** Reads a panel: strips or kept photographs of which experts said beforehand what they show. */
    List<PanelStrip> panel(Path file);
}
