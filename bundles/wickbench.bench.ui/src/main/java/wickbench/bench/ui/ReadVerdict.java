package wickbench.bench.ui;

import java.util.function.Consumer;
import wickbench.shell.PageContext;
import wickbench.widgets.Scroller;

/** What the answers of a strip mean, as soon as they are judged. */
final class ReadVerdict {
    private final PageContext context;
    private final RunHand hand;
    private final Scroller side;
    private final VerdictPanel panel;
    private int strip;

    ReadVerdict(Scroller side, PageContext context, RunHand hand) {
        this.context = context;
        this.hand = hand;
        this.side = side;
        panel = new VerdictPanel(side.content(), context.theme());
    }

    /** Takes the strip before the reader, and says what there is to do before it can be judged. */
    void waiting(int number, String text) {
        strip = number;
        panel.waiting(text);
    }

    /** Has the strip judged, and shows it if it is before the reader yet when that is done. */
    void judge(Consumer<Judged> done, Consumer<String> refused) {
        int of = strip;
        hand.judged(
                judged -> judged.stream()
                        .filter(one -> one.strip().number() == of && of == strip)
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
        side.measure();
    }
}
