package wickbench.api.part;

import java.util.List;

/**
 * What a running set offers to the rest.
 *
 * @param pages ids of pages
 * @param commands names of commands
 * @param gates how many gates it asks before a start
 * @param views how many views of the journal it keeps in the index
 * @param languages ISO 639 codes of the languages in which it brings words for others
 */
public record Brings(List<String> pages, List<String> commands, int gates, int views, List<String> languages) {
    /** What does not run brings nothing. */
    public static final Brings NOTHING = new Brings(List.of(), List.of(), 0, 0, List.of());

    public Brings {
        pages = List.copyOf(pages);
        commands = List.copyOf(commands);
        languages = List.copyOf(languages);
    }

    /** Tells whether it brings words for others and nothing else. */
    public boolean isWordsOnly() {
        return !languages.isEmpty() && pages.isEmpty() && commands.isEmpty() && gates == 0 && views == 0;
    }
}
