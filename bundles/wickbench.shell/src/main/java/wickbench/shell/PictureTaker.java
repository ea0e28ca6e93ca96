package wickbench.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.report.WholeFile;

/** Opens a window on one page, waits until the page says that it is ready, and saves what it painted. */
final class PictureTaker {
    private static final int PATIENCE_SECONDS = 60;
    private static final int MILLIS = 1000;
    /** After the last word of the page: time for the toolkit to lay out and paint. */
    private static final int PAINT_MILLIS = 400;

    private final Places places;
    private final Neighbours neighbours;
    private final Session session;
    private final int patience;
    private List<String> cutOff = List.of();

    /** What is wanted: the page, the thing on it, how it looks and how large at 100 %. */
    record Wanted(String page, Optional<String> thing, Looks looks, Point size) {
        Point pixels() {
            return new Point(size.x * looks.percent() / 100, size.y * looks.percent() / 100);
        }
    }

    PictureTaker(Places places, Neighbours neighbours, Session session) {
        this(places, neighbours, session, PATIENCE_SECONDS);
    }

    PictureTaker(Places places, Neighbours neighbours, Session session, int patience) {
        this.patience = patience;
        this.places = places;
        this.neighbours = neighbours;
        this.session = session;
    }

    /**
     * Takes the picture.
     *
     * @return its size in pixels
     */
    Point take(Wanted wanted, Path out) {
        if (places.find(wanted.page()).isEmpty()) {
            String there = places.all().stream().map(Place::id).collect(Collectors.joining(", "));
            throw new BadInput(
                    Complaint.of("picture", "--page", ShellWords.get("picture.no-page", wanted.page(), there)));
        }
        Display display = Displays.open();
        neighbours.index().ifPresent(index -> index.refuseOn(Thread.currentThread()));
        try (Workers workers = new Workers()) {
            ImageData data = paint(display, workers, wanted);
            save(data, out);
            return new Point(data.width, data.height);
        } finally {
            display.dispose();
        }
    }

    /** Returns the words on the picture just taken that are cut off. */
    List<String> cutOff() {
        return cutOff;
    }

    private ImageData paint(Display display, Workers workers, Wanted wanted) {
        AtomicReference<Optional<Throwable>> broken = new AtomicReference<>(Optional.empty());
        display.setRuntimeExceptionHandler(e -> broken.set(Optional.of(e)));
        Shell shell = new Shell(display, SWT.NO_TRIM);
        Window window = new Window(
                shell,
                new Supplies(
                        places,
                        neighbours,
                        workers,
                        session,
                        Forgetful.FORGETFUL,
                        question -> Optional.empty(),
                        Optional.empty()),
                wanted.looks(),
                () -> {});
        shell.setMinimumSize(1, 1);
        shell.setBounds(0, 0, wanted.pixels().x, wanted.pixels().y);
        shell.open();
        window.show(wanted.page(), wanted.thing());
        await(display, window, wanted, broken);
        broken.get().ifPresent(e -> {
            throw new IllegalStateException(ShellWords.get("picture.broken", wanted.page()), e);
        });
        ImageData taken = capture(shell, wanted.pixels());
        cutOff = CutOff.in(shell);
        return taken;
    }

    private void await(Display display, Window window, Wanted wanted, AtomicReference<Optional<Throwable>> broken) {
        boolean[] late = {false};
        display.timerExec(patience * MILLIS, () -> late[0] = true);
        EventLoop.until(
                display,
                () -> late[0]
                        || broken.get().isPresent()
                        || window.front()
                                .filter(page -> page.settled() || page.failure().isPresent())
                                .isPresent());
        OpenPage page = window.front().orElseThrow();
        page.failure().ifPresent(text -> {
            throw new Refusal("picture.page-failed", ShellWords.get("picture.page-failed", wanted.page(), text));
        });
        if (late[0]) {
            throw new Refusal("picture.not-ready", ShellWords.get("picture.not-ready", wanted.page(), patience));
        }
        window.tellDue();
        EventLoop.until(display, () -> late[0] || !window.board().awaited());
        pause(display);
    }

    private static void pause(Display display) {
        boolean[] over = {false};
        display.timerExec(PAINT_MILLIS, () -> over[0] = true);
        EventLoop.until(display, () -> over[0]);
    }

    /** Takes the window piece by piece, as only what lies on the screen is painted and a picture may be larger. */
    private static ImageData capture(Shell shell, Point size) {
        Rectangle screen = shell.getDisplay().getBounds();
        Image whole = new Image(shell.getDisplay(), size.x, size.y);
        GC gc = new GC(whole);
        for (int y = 0; y < size.y; y += screen.height) {
            for (int x = 0; x < size.x; x += screen.width) {
                int width = Math.min(screen.width, size.x - x);
                int height = Math.min(screen.height, size.y - y);
                Image piece = capture(shell, size, new Point(x, y));
                gc.drawImage(piece, x, y, width, height, x, y, width, height);
                piece.dispose();
            }
        }
        gc.dispose();
        ImageData data = whole.getImageData();
        whole.dispose();
        return data;
    }

    private static Image capture(Shell shell, Point size, Point corner) {
        if (!shell.getLocation().equals(new Point(-corner.x, -corner.y))) {
            shell.setLocation(-corner.x, -corner.y);
            pause(shell.getDisplay());
        }
        Image image = new Image(shell.getDisplay(), size.x, size.y);
        GC gc = new GC(image);
        shell.print(gc);
        gc.dispose();
        return image;
    }

    private static void save(ImageData data, Path out) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        try {
            if (out.toAbsolutePath().getParent() != null) {
                Files.createDirectories(out.toAbsolutePath().getParent());
            }
            new WholeFile(out).write(stream -> {
                loader.save(stream, SWT.IMAGE_PNG);
                return true;
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
