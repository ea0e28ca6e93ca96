/**
 * Who may do what, and what they put their name to.
 *
 * <p>Every service that does something of weight asks {@link wickbench.api.authority.Authority} itself, so that no screen, command
 * or console can go round it. An {@link wickbench.api.authority.Act} names the weight; a
 * {@link wickbench.api.authority.Signature} is kept in the entry that it stands under.
 */
@Export
@Version("1.0.0")
package wickbench.api.authority;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
