package wickbench.journal;

import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;

/**
 * Follows the chain line by line and says which entry was changed.
 *
 * <p>When the link from entry k to the one before is broken, either may be the changed one; the link from k + 1 to k tells.
 */
final class ChainCheck {
    private final StationId station;
    private final Findings findings;
    private final TailForm form;
    /** From here on no checkpoint vouches for the form of a line. */
    private final long unsealed;

    private byte[] before;
    private long place;
    /** The line before is known to be wrong, so the link to it says nothing. */
    private boolean explained;
    /** The line before did not fit the one before it, and which of the two is wrong is open. */
    private boolean doubted;

    ChainCheck(StationId station, long unsealed, Findings findings) {
        this(station, unsealed, findings, 0, Kept.NOTHING.leaf().bytes());
    }

    /** Begins at a place, after the line with this leaf hash. */
    ChainCheck(StationId station, long unsealed, Findings findings, long place, byte[] before) {
        this.station = station;
        this.findings = findings;
        this.unsealed = unsealed;
        this.place = place;
        this.before = before;
        form = new TailForm(station);
    }

    /** Takes the next line, with its leaf hash. */
    void line(Lines lines, byte[] leaf) {
        boolean fits = form.fits(lines.buffer(), lines.from(), lines.length(), before, place);
        if (fits) {
            settleBefore(place - 2);
            explained = false;
        }
        if (!fits || place >= unsealed) {
            look(lines.copy(), leaf, fits);
        }
        before = leaf;
        place++;
    }

    private void look(byte[] line, byte[] leaf, boolean fits) {
        String source = station + ":" + place;
        if (EntryLine.readStrictly(source, line, Hash.of(leaf)) instanceof Checked.Good<Entry> good) {
            if (!fits) {
                misfit(good.value());
            }
        } else {
            settleBefore(place - 2);
            findings.at(place, "entry.unreadable", source);
            explained = true;
        }
    }

    private void misfit(Entry entry) {
        if (!entry.ref().station().equals(station) || entry.ref().seq() != place) {
            settleBefore(place - 2);
            displaced(entry);
        } else if (explained) {
            explained = false;
        } else if (doubted) {
            // neither its own link nor the link to it fits
            changed(place - 1);
        } else {
            doubted = true;
        }
    }

    private void displaced(Entry entry) {
        long seq = entry.ref().seq();
        if (entry.prev().equals(Hash.of(before))) {
            // it follows the line before, so it is in its place and what it says of its place was changed
            findings.at(place, "entry.changed", station + ":" + place);
        } else if (seq > place) {
            findings.at(place, "entry.missing", missing(place, seq - 1));
            place = seq;
        } else {
            findings.at(place, "entry.misplaced", station + ":" + place, entry.ref());
            place--;
        }
        explained = true;
    }

    private static String missing(long first, long last) {
        return first == last ? Long.toString(first) : first + "-" + last;
    }

    private void settleBefore(long wrong) {
        if (doubted) {
            changed(wrong);
        }
    }

    private void changed(long wrong) {
        findings.at(wrong, "entry.changed", station + ":" + wrong);
        doubted = false;
        explained = false;
    }

    /** Names what is still open once there are no more lines. */
    void end() {
        if (doubted) {
            findings.among(place - 2, place - 1, "entry.chain", place - 2, place - 1);
        }
    }
}
