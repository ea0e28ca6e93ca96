/**
 * Install sets: which are there, what they bring, and how one is added or removed while the program runs.
 *
 * <p>A set brings pages, commands, gates and tables of the index, and takes them away again; records stay whatever is removed.
 */
@Export
@Version("1.0.0")
package wickbench.api.part;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
