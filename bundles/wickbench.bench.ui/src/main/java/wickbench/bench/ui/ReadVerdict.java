package wickbench.bench.ui;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;

/** What the answers of a strip mean, as soon as they are judged. */
final class ReadVerdict {
    private final PageContext context;
    private final VerdictPanel panel;

    ReadVerdict(Composite parent, PageContext context) {
        this.context = context;
        panel = new VerdictPanel(parent, context.theme());
    }

    /** Says what there is to do before anything can be judged. */
    void waiting(String text) {
        panel.waiting(text);
    }

    /**
     * Has a strip judged, and shows it.
     *
     * @param still whether the strip is before the reader yet when that is done
     */
    void judge(RunHand hand, int strip, BooleanSupplier still, Consumer<Judged> done, Consumer<String> refused) {
        hand.judged(
                judged -> judged.stream()
                        .filter(one -> one.strip().number() == strip && still.getAsBoolean())
                        .findFirst()
                        .ifPresent(one -> {
                            show(one);
                            done.accept(one);
                        }),
                refused);
    }

    private void show(Judged judged) {
        if (judged.strip().recorded().isPresent()) {
            panel.kept(
                    judged.reading(),
                    FlowWords.get("read.sealed"),
                    judged.strip()
                            .recorded()
                            .filter(id -> context.has("ledger"))
                            .map(id -> () -> context.show("ledger", id.toString())));
        } else {
            panel.show(judged.reading());
        }
    }
}
