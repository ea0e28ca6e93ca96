package wickbench.testing;

import java.nio.file.Path;

/**
 * What a person can do at a window: see words, click on what is drawn, type into what has the focus.
 *
 * <p>Each waits until what it speaks of is there, and fails when it does not come. Things are named by their words, without the
 * marks of keys; of several with the same words the last is meant, which stands nearest to what was opened last.
 */
public interface Hand {

    /** Goes to a place of the rail. */
    void go(String title);

    /** Clicks on a button that can be pressed. */
    void press(String verb);

    /** Clicks into a field, and types over what stands in it. */
    void fill(String label, String text);

    /** Presses Enter where the focus is. */
    void enter();

    /** Presses the arrow down where the focus is. */
    void down();

    /** Clicks on the first row of the table in which these words stand. */
    void row(String words);

    /** Clicks on the first row of the table and then chooses all. */
    void allRows();

    /** Waits until these words stand in the window. */
    void sees(String words);

    /** Says which file or folder is meant when the next is asked for. */
    void means(Path file);

    /** Closes the window. */
    void leave();
}
