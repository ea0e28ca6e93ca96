package wickbench.figures.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.shell.PageContext;
import wickbench.widgets.Job;
import wickbench.widgets.Jobs;
import wickbench.widgets.Memory;
import wickbench.widgets.Metrics;
import wickbench.widgets.Palette;
import wickbench.widgets.Theme;
import wickbench.widgets.Work;

/** A bare window with one page in it: a real display, real threads, and nothing remembered. */
final class TestDesk implements PageContext, Jobs, Memory, AutoCloseable {
    private static final long PATIENCE_NANOS = 20_000_000_000L;

    private final Display display = new Display();
    private final Theme theme;
    private final Shell shell = new Shell(display);
    private final ExecutorService workers = Executors.newFixedThreadPool(2);
    private final Map<String, Json.Obj> kept = new HashMap<>();
    private final List<String> said = new ArrayList<>();
    private Optional<PersonId> actor;
    private boolean ready;
    private Optional<String> failure = Optional.empty();

    TestDesk(boolean dark, int percent, int width, int height, Optional<PersonId> actor) {
        this.actor = actor;
        theme = new Theme(display, dark ? Palette.ofDark() : Palette.ofLight(), new Metrics(percent));
        shell.setBackground(theme.color(theme.palette().ground()));
        FillLayout layout = new FillLayout();
        layout.marginWidth = theme.px(16);
        layout.marginHeight = theme.px(12);
        shell.setLayout(layout);
        shell.setSize(width, height);
    }

    /** Opens a page and waits until it shows what it has. */
    <T> T open(Function<Composite, T> page) {
        T part = page.apply(shell);
        shell.open();
        await(() -> ready || failure.isPresent());
        if (failure.isPresent()) {
            throw new AssertionError(failure.get());
        }
        return part;
    }

    Shell shell() {
        return shell;
    }

    List<String> said() {
        return said;
    }

    /** Lets the window work until something is so. */
    void await(BooleanSupplier so) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (!so.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain; said so far: " + said);
            }
            if (!display.readAndDispatch()) {
                display.timerExec(20, () -> {});
                display.sleep();
            }
        }
    }

    /** Lets everything that is due be painted. */
    void settle() {
        for (int i = 0; i < 20; i++) {
            boolean[] over = new boolean[1];
            display.timerExec(20, () -> over[0] = true);
            await(() -> over[0]);
        }
    }

    /** Saves what the window shows under target/pictures. */
    Path picture(String name) throws java.io.IOException {
        settle();
        Image image = new Image(display, shell.getClientArea().width, shell.getClientArea().height);
        GC gc = new GC(shell);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        Path file = Files.createDirectories(Path.of("target/pictures")).resolve(name + ".png");
        ImageLoader loader = new ImageLoader();
        loader.data = new org.eclipse.swt.graphics.ImageData[] {image.getImageData()};
        loader.save(file.toString(), SWT.IMAGE_PNG);
        image.dispose();
        return file;
    }

    @Override
    public void close() {
        settle();
        workers.shutdownNow();
        shell.dispose();
        theme.dispose();
        display.dispose();
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done, Consumer<Exception> failed) {
        boolean[] state = {true, false};
        workers.execute(() -> {
            try {
                T result = work.run(Progress.NONE);
                deliver(state, () -> done.accept(result));
            } catch (Exception e) {
                deliver(state, () -> failed.accept(e));
            }
        });
        return new Job() {
            @Override
            public void cancel() {
                state[1] = true;
            }

            @Override
            public boolean running() {
                return state[0];
            }
        };
    }

    private void deliver(boolean[] state, Runnable result) {
        display.asyncExec(() -> {
            state[0] = false;
            if (!state[1] && !shell.isDisposed()) {
                result.run();
            }
        });
    }

    @Override
    public <T> Job run(String what, Work<T> work, Consumer<? super T> done) {
        return run(what, work, done, failed -> failed(failed.toString()));
    }

    @Override
    public Theme theme() {
        return theme;
    }

    @Override
    public Jobs jobs() {
        return this;
    }

    @Override
    public Memory memory() {
        return this;
    }

    @Override
    public Optional<Json.Obj> recall(String key) {
        return Optional.ofNullable(kept.get(key));
    }

    @Override
    public void keep(String key, Json.Obj value) {
        kept.put(key, value);
    }

    @Override
    public void forget(String key) {
        kept.remove(key);
    }

    @Override
    public void ready() {
        ready = true;
    }

    @Override
    public void failed(String text) {
        failure = Optional.of(text);
    }

    @Override
    public Optional<PersonId> actor() {
        return actor;
    }

    @Override
    public void onActor(Consumer<Optional<PersonId>> listener) {}

    @Override
    public void say(String text) {
        said.add(text);
    }

    @Override
    public void show(String page) {
        said.add("page " + page);
    }

    @Override
    public void show(String page, String argument) {
        said.add("page " + page + " at " + argument);
    }

    @Override
    public boolean has(String page) {
        return true;
    }

    @Override
    public void update(Runnable change) {
        display.asyncExec(change);
    }
}
