package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import wickbench.api.person.PersonId;
import wickbench.widgets.EmptyState;
import wickbench.widgets.FileChoice;
import wickbench.widgets.Jobs;
import wickbench.widgets.Memory;
import wickbench.widgets.Theme;

/** A page in the window, from opening to closing. */
final class OpenPage implements PageContext {
    /** Around every page, in steps of the grid. */
    private static final double MARGIN = 2.5;

    private final Place place;
    private final Means means;
    private final Theme theme;
    private final Composite box;
    private final Display display;
    private final PageJobs jobs;
    private final List<Consumer<Optional<PersonId>>> actorListeners = new ArrayList<>();
    private Optional<PagePart> part = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private boolean ready;
    /** The control that had the focus because the page had no better place for it yet. */
    private Optional<Control> byDefault = Optional.empty();

    /** What a page's window offers it. */
    record Means(Supplies supplies, JobBoard board, Surroundings around) {}

    /** What the window does for its pages. */
    interface Surroundings {
        void say(String text);

        void show(String page, Optional<String> argument);

        boolean has(String page);

        void openAnew(OpenPage page);
    }

    OpenPage(Composite parent, Theme theme, Place place, Means means) {
        this.place = place;
        this.theme = theme;
        this.means = means;
        display = parent.getDisplay();
        box = new Composite(parent, SWT.NONE);
        box.setBackground(theme.color(theme.palette().ground()));
        FillLayout layout = new FillLayout();
        layout.marginWidth = theme.metrics().grid(MARGIN);
        layout.marginHeight = theme.metrics().grid(MARGIN);
        box.setLayout(layout);
        jobs = new PageJobs(
                display,
                means.supplies().workers().pool(),
                () -> !box.isDisposed() && failure.isEmpty(),
                means.board(),
                e -> failed(Failures.plain(e)));
    }

    /** Lets the page fill its box and take up what was left of it before. */
    void open(Optional<String> argument, Optional<Object> draft) {
        try {
            PagePart opened = place.page().open(box, this);
            part = Optional.of(opened);
            draft.ifPresent(opened::restore);
            argument.ifPresent(opened::show);
        } catch (RuntimeException e) {
            failed(Failures.plain(e));
        }
        box.layout(true, true);
    }

    String id() {
        return place.id();
    }

    Place place() {
        return place;
    }

    Composite box() {
        return box;
    }

    Optional<PagePart> part() {
        return part;
    }

    Optional<String> failure() {
        return failure;
    }

    /** Returns the keys of the page as it stands. */
    List<KeyHint> keys() {
        return new PageKeyList(box, part.map(PagePart::keys).orElse(List.of())).all();
    }

    /** Tells whether something is under way. */
    boolean busy() {
        return !jobs.idle();
    }

    /** Tells whether the page said that it is ready and has nothing under way. */
    boolean settled() {
        return ready && jobs.idle();
    }

    /** Tells the page that it is in front, once everything is laid out: a control without a size keeps no focus. */
    void comeToFront(BooleanSupplier still) {
        display.asyncExec(() -> {
            if (!box.isDisposed() && still.getAsBoolean()) {
                part.ifPresent(PagePart::shown);
                takeFocus();
            }
        });
    }

    /** Puts the focus on the first control that takes it, unless the page has chosen one: without any, keys go nowhere. */
    private void takeFocus() {
        Control at = display.getFocusControl();
        while (at != null && at != box) {
            at = at.getParent();
        }
        if (at == null) {
            box.setFocus();
            byDefault = ready ? Optional.empty() : Optional.ofNullable(display.getFocusControl());
        }
    }

    /** Leads the focus on to what came late, unless somebody has moved it since. */
    private void leadFocusOn() {
        boolean untouched = byDefault
                .filter(control -> !control.isDisposed())
                .filter(Control::isFocusControl)
                .isPresent();
        byDefault = Optional.empty();
        if (untouched) {
            part.ifPresent(PagePart::focus);
        }
    }

    void close() {
        jobs.cancelAll();
        part.ifPresent(PagePart::closed);
        actorListeners.forEach(means.supplies().session()::forget);
        box.dispose();
    }

    @Override
    public Theme theme() {
        return theme;
    }

    @Override
    public Jobs jobs() {
        return jobs;
    }

    @Override
    public Memory memory() {
        return means.supplies().memory();
    }

    @Override
    public FileChoice files() {
        return means.supplies().files();
    }

    @Override
    public void ready() {
        ready = true;
        leadFocusOn();
    }

    @Override
    public void failed(String text) {
        failure = Optional.of(text);
        jobs.cancelAll();
        part.ifPresent(PagePart::closed);
        part = Optional.empty();
        for (Control child : box.getChildren()) {
            child.dispose();
        }
        EmptyState.failure(box, theme, text, Optional.of(() -> means.around().openAnew(this)));
        box.layout(true, true);
    }

    @Override
    public Optional<PersonId> actor() {
        return means.supplies().session().actor();
    }

    @Override
    public void onActor(Consumer<Optional<PersonId>> listener) {
        actorListeners.add(listener);
        means.supplies().session().onChange(listener);
    }

    @Override
    public void say(String text) {
        means.around().say(text);
    }

    @Override
    public void show(String page) {
        means.around().show(page, Optional.empty());
    }

    @Override
    public void show(String page, String argument) {
        means.around().show(page, Optional.of(argument));
    }

    @Override
    public boolean has(String page) {
        return means.around().has(page);
    }

    @Override
    public void update(Runnable change) {
        try {
            display.asyncExec(() -> {
                if (!box.isDisposed() && failure.isEmpty()) {
                    change.run();
                }
            });
        } catch (SWTException gone) {
            // the window closed meanwhile: nothing is left to be changed
            if (gone.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw gone;
            }
        }
    }
}
