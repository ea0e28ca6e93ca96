package wickbench.widgets;

import org.eclipse.swt.widgets.Composite;

/** One part of a page, in front when its tab is chosen. All methods are called on the UI thread. */
public interface Room {

    /** Returns what is shown. */
    Composite control();

    /** Reads anew what is shown; leaves alone what is chosen or half typed. */
    void reload();

    /** Puts the focus where work goes on. */
    void focus();

    /** Shows one thing of it. */
    default void show(String argument) {}
}
