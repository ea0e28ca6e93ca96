package wickbench.journal;

import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.api.journal.StationId;
import wickbench.proof.Digest;
import wickbench.proof.Note;

/**
 * What somebody says that a journal held.
 *
 * @param note the signed text; empty when it was typed by hand
 */
record Claim(StationId station, long size, Digest root, Optional<Note> note) {
    private static final Pattern TYPED =
            Pattern.compile("\\s*([a-z][a-z0-9-]{0,31})[\\s,;:]+([0-9]{1,18})[\\s,;:]+([0-9A-Za-z+/=\\s]+?)\\s*");
    private static final int BASE64_LENGTH = 44;

    /** Reads the signed text, as it may come out of a mail or a code, or what a person typed; empty when it is neither. */
    static Optional<Claim> read(String text) {
        String unix = text.replace("\r\n", "\n").strip() + "\n";
        return Note.parse(unix)
                .flatMap(note -> Origin.station(note.origin())
                        .map(station -> new Claim(station, note.size(), note.root(), Optional.of(note))))
                .or(() -> typed(unix));
    }

    private static Optional<Claim> typed(String text) {
        Matcher form = TYPED.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        return root(form.group(3).replaceAll("\\s", ""))
                .map(root ->
                        new Claim(new StationId(form.group(1)), Long.parseLong(form.group(2)), root, Optional.empty()));
    }

    private static Optional<Digest> root(String text) {
        try {
            return Optional.of(
                    text.length() == BASE64_LENGTH
                            ? Digest.of(Base64.getDecoder().decode(text))
                            : new Digest(text.toLowerCase(java.util.Locale.ROOT)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
