package wickbench.testing.ui.access;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.widgets.Control;

/** Asks for the words, and goes round each view by Tab as well. */
public final class AccessWalk extends WordsWalk {
    /** Looked at with the focus and without: what stands on every page is looked at once. */
    private final Set<Control> looked = new HashSet<>();

    /** @param window whose display it is */
    public AccessWalk(Thread window) {
        super(window);
    }

    @Override
    List<String> further(List<Control> all) {
        return new TabRound(posted, looked)
                .go(all).stream().map(miss -> "tab: " + miss).toList();
    }
}
