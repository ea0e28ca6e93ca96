package wickbench.parts.kept;

import java.nio.file.Path;
import java.util.Map;
import wickbench.parts.running.ArchiveSource;
import wickbench.parts.running.ProductSets;
import wickbench.parts.running.RunningSets;
import wickbench.parts.running.SetSource;

/** The sets of one home, as the rest of this bundle meets them. */
public interface HomeSets {

    ProductSets product();

    RunningSets running();

    /** Returns why sets of this home do not run, by name. */
    Map<String, String> troubles();

    /** Reads an archive and judges it whole, but for what only a running framework can tell. */
    ArchiveSource read(Path archive);

    /** Takes a set up and remembers it. */
    void add(ArchiveSource source);

    /** Takes a set of the product up and remembers it. */
    void add(SetSource source);

    /** Takes a set down and forgets it; a set that did not come up is forgotten too. */
    void remove(String name);
}
