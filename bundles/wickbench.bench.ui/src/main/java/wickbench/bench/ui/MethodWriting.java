package wickbench.bench.ui;

import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.bench.ui.editor.EditorHost;
import wickbench.bench.ui.editor.MethodEditor;
import wickbench.bench.ui.editor.MethodText;
import wickbench.widgets.Memory;

/** The one draft of a method at this desk: kept at each change, until it is issued or thrown away. */
record MethodWriting(Memory memory, Known known, BiConsumer<Composite, Method> offered, Runnable left)
        implements EditorHost {
    private static final String KEY = "bench.method-draft";

    /** Returns the draft that was kept, if there is one. */
    static Optional<MethodText> kept(Memory memory) {
        return memory.recall(KEY).map(MethodText::of).filter(text -> !text.empty());
    }

    static void forget(Memory memory) {
        memory.forget(KEY);
    }

    /** Starts on a draft, or goes on with it. */
    MethodEditor open(Composite parent, wickbench.widgets.Theme theme, MethodText text) {
        keep(text);
        return new MethodEditor(parent, theme, this, text);
    }

    @Override
    public int version(String id) {
        return 1
                + known.methods().stream()
                        .map(issued -> issued.method().ref())
                        .filter(ref -> ref.id().value().equals(id))
                        .mapToInt(ref -> ref.version())
                        .max()
                        .orElse(0);
    }

    @Override
    public void keep(MethodText text) {
        memory.keep(KEY, text.kept());
    }

    @Override
    public void offer(Composite parent, Method method) {
        offered.accept(parent, method);
    }

    @Override
    public void leave() {
        left.run();
    }

    @Override
    public void discard() {
        forget(memory);
        left.run();
    }
}
