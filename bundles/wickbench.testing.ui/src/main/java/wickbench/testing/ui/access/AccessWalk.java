package wickbench.testing.ui.access;

import java.util.List;
import org.eclipse.swt.widgets.Control;

/** Asks for the words, and goes round each view by Tab as well. */
public final class AccessWalk extends WordsWalk {

    /** @param window whose display it is */
    public AccessWalk(Thread window) {
        super(window);
    }

    @Override
    List<String> further(List<Control> all) {
        return new TabRound(posted).go(all).stream().map(miss -> "tab: " + miss).toList();
    }
}
