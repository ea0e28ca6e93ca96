package wickbench.shell;

import java.util.Comparator;
import wickbench.widgets.Mark;

/**
 * Something due.
 *
 * @param mark its words, with shape and colour by its urgency
 * @param page where one deals with it
 * @param argument the thing on that page
 */
public record Due(Mark mark, String page, String argument) {

    /**
     * A strip to be read now stands before whatever can wait, whichever part of the program says so.
     *
     * <p>What is as urgent stands in the order of its pages: parts come up in any order, and nothing may change places for that.
     */
    static final Comparator<Due> MOST_URGENT_FIRST =
            Comparator.comparingInt(Due::haste).thenComparing(Due::page);

    private static int haste(Due due) {
        return switch (due.mark().meaning()) {
            case ALARM, EXTREME -> 0;
            case CAUTION -> 1;
            case NOTICE, NEUTRAL, CALM -> 2;
        };
    }
}
