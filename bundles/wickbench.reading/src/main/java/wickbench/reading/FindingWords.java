package wickbench.reading;

import java.util.Locale;
import wickbench.api.reading.Finding;
import wickbench.api.words.Words;

/** Findings in sentences, in the user's language. */
public final class FindingWords {
    private static final String NOT_CHECKED = "-not-checked";

    private static final String NAMES = "lot.other-";

    private FindingWords() {}

    /**
     * Returns one plain sentence with what was measured and what was asked.
     *
     * <p>A rule that this bundle does not know, brought by a neighbour, gets a general sentence with its id.
     */
    public static String text(Finding finding) {
        Words words = ReadingWords.words();
        return words.get(
                key(words, finding), fact(finding, finding.measured()), fact(finding, finding.asked()), finding.rule());
    }

    /** A rule about another kit or insert names them, and a name is never translated. */
    private static String fact(Finding finding, String stated) {
        return finding.rule().startsWith(NAMES) ? stated : FactWords.said(stated);
    }

    /** Returns the most special key that has words: of this rule and measure, of this rule, of any. */
    private static String key(Words words, Finding finding) {
        String rule = "finding." + finding.rule();
        String special =
                rule + "." + finding.measured().toLowerCase(Locale.ROOT).replace(' ', '-');
        if (words.has(special)) {
            return special;
        }
        if (words.has(rule)) {
            return rule;
        }
        return finding.rule().endsWith(NOT_CHECKED) ? "finding.not-checked" : "finding.other";
    }
}
