package wickbench.ledger.papers;

import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/**
 * The body of {@code pack.made}: what was handed out of the journal.
 *
 * @param of what was asked for, in words
 * @param entries how many entries are in it
 * @param sums SHA-256 of its list of files, so that neither a file nor an entry can be taken out unseen
 */
public record PackMade(String of, long entries, Hash sums) {
    public static final String KIND = "pack.made";
    public static final int VERSION = 1;

    public Json.Obj body() {
        return Json.object().with("of", of).with("entries", entries).with("sums", sums.hex());
    }
}
