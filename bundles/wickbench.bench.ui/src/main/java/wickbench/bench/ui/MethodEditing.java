package wickbench.bench.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.Method;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.bench.ui.editor.MethodEditor;
import wickbench.bench.ui.editor.MethodText;
import wickbench.shell.PageContext;

/** A method being written on the page, from an empty form, from the draft that was kept, or from a version before. */
final class MethodEditing {
    private final PageContext context;
    private final MethodActs acts;
    private final Runnable leave;
    private final Consumer<Method> issued;
    private Optional<MethodEditor> editor = Optional.empty();

    /**
     * @param leave shows the methods again
     * @param issued shows the method that was issued
     */
    MethodEditing(PageContext context, MethodActs acts, Runnable leave, Consumer<Method> issued) {
        this.context = context;
        this.acts = acts;
        this.leave = leave;
        this.issued = issued;
    }

    String words() {
        return BenchUiWords.get(kept().isPresent() ? "write.go-on" : "write.open");
    }

    /** Opens the editor on the draft that was kept, or on an empty one. */
    void open(Composite room, Known known) {
        open(room, known, kept().orElse(MethodText.EMPTY));
    }

    /** Starts a new version of a method; a draft that stands is gone on with first, and never written over. */
    void renew(Composite room, Known known, Method method) {
        Optional<MethodText> kept = kept();
        kept.ifPresent(text -> context.say(BenchUiWords.get("write.stands")));
        open(room, known, kept.orElseGet(() -> MethodText.of(method)));
    }

    private Optional<MethodText> kept() {
        return MethodWriting.kept(context.memory());
    }

    private void open(Composite room, Known known, MethodText text) {
        MethodWriting writing =
                new MethodWriting(context.memory(), known, (content, method) -> offer(content, known, method), leave);
        editor = Optional.of(writing.open(room, context.theme(), text));
    }

    private void offer(Composite content, Known known, Method method) {
        new MethodDraft(content, context, new MethodCard(content, context.theme(), known))
                .offer(
                        method,
                        BenchUiWords.get("write.note"),
                        known.rights().issue(),
                        ready -> acts.issue(known, ready, () -> {
                            MethodWriting.forget(context.memory());
                            issued.accept(ready);
                        }));
    }

    void close() {
        editor = Optional.empty();
    }

    Optional<MethodEditor> editor() {
        return editor;
    }
}
