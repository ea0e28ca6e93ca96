package wickbench.parts.kept;

import org.osgi.framework.Version;
import wickbench.api.journal.Hash;
import wickbench.parts.plan.SetId;

/** A set that was added from an archive, which lies beside the list. */
record KeptArchive(SetId id, Hash hash) {

    String file() {
        return id.name() + "-" + id.version() + ".zip";
    }

    static KeptArchive of(String name, String version, String hash) {
        return new KeptArchive(new SetId(name, Version.parseVersion(version)), new Hash(hash));
    }
}
