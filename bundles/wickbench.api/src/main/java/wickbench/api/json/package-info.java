/**
 * JSON as values: strict to read, canonical to write.
 *
 * <p>The journal keeps JSON in the canonical form of RFC 8785, so reading is strict (RFC 7493: no duplicate names, no
 * lone surrogates) and numbers are decimals of at most 15 significant digits, which every reader of JSON keeps exactly.
 */
@Export
@Version("1.0.0")
package wickbench.api.json;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
