package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Glyph;

/** A page that notes what happens to it and does what the test tells it to when it is opened. */
final class PlainPage implements Page {
    private final String title;
    private final BiConsumer<Label, PageContext> onOpen;
    private final List<String> heard = new ArrayList<>();

    PlainPage(String title, BiConsumer<Label, PageContext> onOpen) {
        this.title = title;
        this.onOpen = onOpen;
    }

    PlainPage(String title) {
        this(title, (label, context) -> context.ready());
    }

    List<String> heard() {
        return heard;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.circle(12, 12, 8);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        heard.add("open");
        Label label = new Label(parent, SWT.NONE);
        onOpen.accept(label, context);
        return new PagePart() {
            @Override
            public void show(String argument) {
                heard.add("show " + argument);
            }

            @Override
            public void shown() {
                heard.add("shown");
            }

            @Override
            public Optional<Object> draft() {
                return label.isDisposed() || label.getText().isEmpty()
                        ? Optional.empty()
                        : Optional.of(label.getText());
            }

            @Override
            public void restore(Object draft) {
                label.setText(draft.toString());
                heard.add("restore " + draft);
            }

            @Override
            public void closed() {
                heard.add("closed");
            }
        };
    }
}
