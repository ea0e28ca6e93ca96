package wickbench.api.attachment;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A file name that means the same file everywhere and never leads out of its folder.
 *
 * <p>Folders, control and direction characters, what a file system forbids, and names that are devices on Windows are gone; at
 * most {@value #LONGEST} characters stay.
 *
 * @param value the name
 */
public record FileName(String value) {
    /** Four bytes of UTF-8 each, and still within the 255 bytes of common file systems with an ending to spare. */
    public static final int LONGEST = 60;

    private static final String NAMELESS = "attachment";
    private static final int LONGEST_ENDING = 10;
    private static final Pattern FORBIDDEN =
            Pattern.compile("[<>:\"|?*\\p{Cntrl}\\p{Cf}\\p{Co}\\p{Cs}\\p{Cn}\\p{Zl}\\p{Zp}]");
    private static final Pattern DEVICE =
            Pattern.compile("(?:CON|PRN|AUX|NUL|COM[0-9¹²³]|LPT[0-9¹²³])(?:\\..*)?", Pattern.CASE_INSENSITIVE);

    public FileName {
        if (!value.equals(normal(value))) {
            throw new IllegalArgumentException(
                    "expected a name such as '" + normal(value) + "', found '" + value + "'");
        }
    }

    /** Makes a safe name of any text. */
    public static FileName of(String text) {
        return new FileName(normal(text));
    }

    /** Returns the ending after the last dot, in lower case; empty when there is none. */
    public String ending() {
        int dot = value.lastIndexOf('.');
        return dot < 0 ? "" : value.substring(dot + 1).toLowerCase(Locale.ROOT);
    }

    @Override
    public String toString() {
        return value;
    }

    private static String normal(String text) {
        String last = text.substring(Math.max(text.lastIndexOf('/'), text.lastIndexOf('\\')) + 1);
        String clean = FORBIDDEN
                .matcher(Normalizer.normalize(last, Normalizer.Form.NFC))
                .replaceAll("_");
        String trimmed = trimmed(shortened(trimmed(clean)));
        if (trimmed.isEmpty()) {
            return NAMELESS;
        }
        return DEVICE.matcher(trimmed).matches() ? trimmed(shortened("_" + trimmed)) : trimmed;
    }

    /** Takes away what Windows would drop at the end, and dots at the start, which hide a file. */
    private static String trimmed(String name) {
        return name.replaceFirst("^[.\\s]+", "").replaceFirst("[.\\s]+$", "");
    }

    /** Shortens a long name before its ending. */
    private static String shortened(String name) {
        if (name.codePointCount(0, name.length()) <= LONGEST) {
            return name;
        }
        int dot = name.lastIndexOf('.');
        String ending = dot > 0 && name.length() - dot <= LONGEST_ENDING ? name.substring(dot) : "";
        int kept = LONGEST - ending.codePointCount(0, ending.length());
        return name.substring(0, name.offsetByCodePoints(0, kept)) + ending;
    }
}
