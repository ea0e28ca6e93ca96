package wickbench.bench.ui.editor;

import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;

/** What the page does for the editor; called on the UI thread. */
public interface EditorHost {
    /** Returns which version a method of this id would be; 1 where there is none yet. */
    int version(String id);

    /** Keeps the draft, at each change. */
    void keep(MethodText text);

    /** Shows a method that nothing is wrong with, and how it is issued. */
    void offer(Composite parent, Method method);

    /** Leaves the editor; the draft stays. */
    void leave();

    /** Throws the draft away. */
    void discard();
}
