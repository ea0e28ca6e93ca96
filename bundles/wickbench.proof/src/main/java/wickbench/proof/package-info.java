/**
 * Proves that an entry is in a journal, and that an older journal is the beginning of a newer one.
 *
 * <p>Merkle trees and proofs after RFC 9162 §2.1, checkpoints after C2SP tlog-checkpoint and signed-note, tiles after C2SP
 * tlog-tiles. Needs nothing of the house: whoever doubts it can check with these classes alone, or with none of them
 * ({@code docs/verify-without-wickbench.md}).
 */
@Export
@Version("1.0.0")
package wickbench.proof;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
