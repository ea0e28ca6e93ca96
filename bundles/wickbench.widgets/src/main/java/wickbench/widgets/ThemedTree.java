package wickbench.widgets;

import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;

/** Makes a native tree in the colours of a theme. */
public final class ThemedTree {
    private ThemedTree() {}

    /**
     * Makes a tree of which one item is chosen.
     *
     * @param name what screen readers say
     */
    public static Tree make(Composite parent, Theme theme, Supplier<String> name) {
        Tree tree = theme.controls().style(new Tree(parent, SWT.SINGLE | SWT.V_SCROLL), Type.BODY);
        SelectedRow.paintIn(tree, theme);
        return Names.give(tree, name);
    }
}
