package wickbench.api.part;

import java.util.List;

/**
 * What a running set offers to the rest.
 *
 * @param pages ids of pages
 * @param commands names of commands
 * @param gates how many gates it asks before a start
 * @param views how many views of the journal it keeps in the index
 */
public record Brings(List<String> pages, List<String> commands, int gates, int views) {
    /** What does not run brings nothing. */
    public static final Brings NOTHING = new Brings(List.of(), List.of(), 0, 0);

    public Brings {
        pages = List.copyOf(pages);
        commands = List.copyOf(commands);
    }
}
