/**
 * Files that belong to an entry: a photograph of a strip, a certificate, a temperature log.
 *
 * <p>A file is kept by the SHA-256 of its bytes; the entry {@code attachment.added} says what it is and to which entry it
 * belongs. Nothing is believed of a file before its bytes were looked at.
 */
@Export
@Version("1.0.0")
package wickbench.api.attachment;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
