package wickbench.parts.archive;

import java.util.regex.Pattern;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.parts.words.PartsWords;

/** The few names that a file in a set may have: nothing that leads out of a folder, and nothing that one system reads otherwise than another. */
final class SafeName {
    static final String DIGESTS = "DIGESTS";
    static final String SIGNATURE = "SIGNATURE";
    static final String FEATURE = "feature.json";
    static final String BUNDLES = "bundles/";

    private static final Pattern ABSOLUTE = Pattern.compile("(?:[/\\\\]|[A-Za-z]:).*", Pattern.DOTALL);
    private static final Pattern CLIMBING = Pattern.compile("(?:.*[/\\\\])?\\.\\.?(?:[/\\\\].*)?", Pattern.DOTALL);
    private static final Pattern BUNDLE = Pattern.compile("bundles/[A-Za-z0-9][A-Za-z0-9._-]*\\.jar");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}]");

    private SafeName() {}

    static void check(String source, String name) {
        if (ABSOLUTE.matcher(name).matches()) {
            throw bad(source, name, PartsWords.get("name.absolute"));
        }
        if (CLIMBING.matcher(name).matches()) {
            throw bad(source, name, PartsWords.get("name.climbs"));
        }
        boolean known = name.equals(DIGESTS) || name.equals(SIGNATURE) || name.equals(FEATURE);
        if (!known && !BUNDLE.matcher(name).matches()) {
            throw bad(source, name, PartsWords.get("name.unknown"));
        }
    }

    /** What is shown of a name must not move the cursor. */
    private static BadInput bad(String source, String name, String text) {
        return new BadInput(Complaint.of(source, CONTROL.matcher(name).replaceAll("?"), text));
    }
}
