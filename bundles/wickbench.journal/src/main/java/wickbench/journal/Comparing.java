package wickbench.journal;

import java.io.IOException;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Comparison.Result;

/** Holds what somebody says of a journal against what is here. */
final class Comparing {
    private final Station station;
    private final Seal newest;
    private final StationTree tree;

    /** @param newest the newest checkpoint of the station here */
    Comparing(Station station, Seal newest, StationTree tree) {
        this.station = station;
        this.newest = newest;
        this.tree = tree;
    }

    Comparison compare(Claim claim) throws IOException {
        boolean signed = claim.note()
                .filter(note -> note.signedBy(station.founded().key()))
                .isPresent();
        if (claim.note().isPresent() && !signed) {
            return say(
                    Result.KEY_DIFFERS,
                    false,
                    claim.station(),
                    station.founded().key().fingerprint());
        }
        if (claim.size() > newest.size()) {
            return say(
                    Result.OLDER, signed, claim.station(), newest.size(), claim.size(), claim.size() - newest.size());
        }
        return tree.link(claim.size(), newest).root().equals(claim.root())
                ? say(
                        Result.CONSISTENT,
                        signed,
                        claim.station(),
                        claim.size(),
                        newest.size(),
                        newest.size() - claim.size())
                : say(Result.FORKED, signed, claim.station(), claim.size());
    }

    /** Says a result in words, and that nobody vouches for what was typed by hand. */
    static Comparison say(Result result, boolean signed, Object... values) {
        String text = Say.words("compare." + result.code(), values);
        boolean typed = !signed && (result == Result.CONSISTENT || result == Result.OLDER || result == Result.FORKED);
        return new Comparison(result, signed, typed ? text + " " + Say.words("compare.typed") : text);
    }
}
