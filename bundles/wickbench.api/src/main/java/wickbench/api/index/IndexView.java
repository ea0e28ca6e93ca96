package wickbench.api.index;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;
import wickbench.api.journal.Entry;

/**
 * A bundle's own tables, made from the entries that it understands.
 *
 * <p>Contributed as a service. Each view has a schema of its own, its own position in the journal and its own transaction; one
 * that fails falls behind alone. The law: whatever was rebuilt equals what was kept, so {@link #apply} depends on nothing but
 * the entries, and makes no keys of its own.
 */
@ConsumerType
public interface IndexView {

    /** Returns the schema's name: lower-case letters and underscores, one a bundle. */
    String name();

    /** Returns the version of these tables; when it changes, the view is rebuilt. */
    int version();

    /** Returns the statements that make the tables, in standard SQL, without schema names. */
    List<String> tables();

    /** Takes one entry; kinds and versions that it does not know are passed over. */
    void apply(Entry entry, Rows rows);
}
