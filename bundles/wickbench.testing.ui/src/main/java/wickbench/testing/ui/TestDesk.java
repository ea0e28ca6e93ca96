package wickbench.testing.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.FileChoice;
import wickbench.widgets.FileQuestion;
import wickbench.widgets.Jobs;
import wickbench.widgets.Memory;
import wickbench.widgets.Metrics;
import wickbench.widgets.Palette;
import wickbench.widgets.Theme;

/** A bare window with one page in it: a real display, real threads, and nothing remembered. */
public final class TestDesk implements PageContext, AutoCloseable {
    private static final long PATIENCE_NANOS = 60_000_000_000L;

    private final Display display = new Display();
    private final Shell shell = new Shell(display);
    private final TestJobs jobs = new TestJobs(shell, this::failed);
    private final Memory memory = new TestMemory();
    private final List<String> said = new ArrayList<>();
    private final Queue<Path> answers = new ArrayDeque<>();
    private final List<FileQuestion> asked = new ArrayList<>();
    private final List<Consumer<Optional<PersonId>>> actorListeners = new ArrayList<>();
    private final Theme theme;
    private Optional<PersonId> actor;
    private boolean ready;
    private Optional<String> failure = Optional.empty();

    /**
     * Makes a window that is not shown yet.
     *
     * @param percent the size of text and spaces, 100 being usual
     * @param width in pixels, as is the height
     */
    public TestDesk(boolean dark, int percent, int width, int height, Optional<PersonId> actor) {
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
    public <T> T open(Function<Composite, T> page) {
        T part = page.apply(shell);
        shell.open();
        await(() -> ready || failure.isPresent());
        if (failure.isPresent()) {
            throw new AssertionError(failure.get());
        }
        return part;
    }

    public Shell shell() {
        return shell;
    }

    /** Returns what the page said, and to which pages it led. */
    public List<String> said() {
        return said;
    }

    /** Returns how far work behind the screen said that it was, such as {@code Reading the sets: 3 of 8}. */
    public List<String> progress() {
        return jobs.told();
    }

    /** Lets the window work until something is so. */
    public void await(BooleanSupplier so) {
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
    public void settle() {
        for (int i = 0; i < 20; i++) {
            boolean[] over = new boolean[1];
            display.timerExec(20, () -> over[0] = true);
            await(() -> over[0]);
        }
    }

    /** Saves what the window shows under target/pictures. */
    public Path picture(String name) throws IOException {
        settle();
        Image image = new Image(display, shell.getClientArea().width, shell.getClientArea().height);
        GC gc = new GC(shell);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        Path file = Files.createDirectories(Path.of("target/pictures")).resolve(name + ".png");
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData()};
        loader.save(file.toString(), SWT.IMAGE_PNG);
        image.dispose();
        return file;
    }

    /** Signs somebody in. */
    public void signIn(PersonId person) {
        actor = Optional.of(person);
        actorListeners.forEach(listener -> listener.accept(actor));
    }

    @Override
    public void close() {
        jobs.close();
        shell.dispose();
        theme.dispose();
        display.dispose();
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
        return memory;
    }

    @Override
    public FileChoice files() {
        return question -> {
            asked.add(question);
            return Optional.of(Objects.requireNonNull(answers.poll(), () -> "nobody answers " + question));
        };
    }

    /** Answers the next question for a file. */
    public void answer(Path file) {
        answers.add(file);
    }

    /** Returns for which files the page asked. */
    public List<FileQuestion> asked() {
        return asked;
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
    public void onActor(Consumer<Optional<PersonId>> listener) {
        actorListeners.add(listener);
    }

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
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!shell.isDisposed()) {
                    change.run();
                }
            });
        }
    }
}
