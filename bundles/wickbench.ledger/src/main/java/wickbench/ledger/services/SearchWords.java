package wickbench.ledger.services;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What is looked for in free text: each word anywhere, in any case of letters; what stands in quotation marks as it stands. */
final class SearchWords {
    private static final Pattern WORD = Pattern.compile("\"([^\"]+)\"|(\\S+)");

    private SearchWords() {}

    static List<String> of(String text) {
        return WORD.matcher(text)
                .results()
                .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .distinct()
                .toList();
    }
}
