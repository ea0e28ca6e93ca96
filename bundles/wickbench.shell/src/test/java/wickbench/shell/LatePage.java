package wickbench.shell;

import java.util.concurrent.CountDownLatch;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Glyph;

/** A page with two buttons, and a field for its work that comes only once the test lets it. */
final class LatePage implements Page {
    private final CountDownLatch loaded = new CountDownLatch(1);
    private Button first;
    private Button second;
    private Text field;

    /** Lets the field come. */
    void load() {
        loaded.countDown();
    }

    Button first() {
        return first;
    }

    Button second() {
        return second;
    }

    Text field() {
        return field;
    }

    @Override
    public String title() {
        return "&Late";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.circle(12, 12, 8);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        Composite page = context.theme().controls().box(parent, 1);
        first = context.theme().controls().button(page, "&Print", () -> {});
        second = context.theme().controls().button(page, "Pac&k", () -> {});
        context.jobs().run("loading", progress -> await(), done -> {
            field = new Text(page, SWT.BORDER);
            page.layout();
            context.ready();
        });
        return new PagePart() {
            @Override
            public void focus() {
                if (field != null) {
                    field.setFocus();
                }
            }
        };
    }

    private Boolean await() throws InterruptedException {
        loaded.await();
        return true;
    }
}
