package wickbench.shell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.check.Refusal;
import wickbench.api.command.Desktop;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.words.KeptLanguage;
import wickbench.widgets.FileChoice;

/** Opens the window on the home of this program and keeps it until it is closed. */
@Component
public final class DesktopWindow implements Desktop {
    private final BundleContext context;
    private final Home home;
    private final Places places;
    private final Neighbours neighbours;
    private final News news;
    private final FileChoice files;
    private volatile Optional<Shell> front = Optional.empty();

    @Activate
    public DesktopWindow(
            BundleContext context,
            @Reference Home home,
            @Reference Places places,
            @Reference Neighbours neighbours,
            @Reference News news,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) FileChoice files) {
        this.context = context;
        this.home = home;
        this.places = places;
        this.neighbours = neighbours;
        this.news = news;
        this.files = files;
    }

    @Override
    public int open(Optional<String> page, Optional<PersonId> actor) {
        try (Workers workers = new Workers()) {
            Future<?> hold = workers.pool().submit(this::takeHome);
            neighbours.index().ifPresent(index -> prepare(index, workers));
            Display display = Displays.open();
            try {
                run(display, workers, page, actor, hold);
            } finally {
                display.dispose();
            }
        }
        return 0;
    }

    /** Takes the home; what else may be wrong with it is told by whoever asks first. */
    private Object takeHome() {
        return neighbours.journal().map(Journal::founding);
    }

    /** Two desktops may be started at once: the one that does not get the home must not show a window. */
    private static void refuseWithout(Future<?> hold) {
        try {
            hold.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Refusal refusal && refusal.code().equals("home.held")) {
                throw refusal;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /**
     * Opens journal and index beside the window, which takes about as long.
     *
     * <p>What goes wrong here goes wrong again for whoever asks first, and is told there.
     */
    private static void prepare(Index index, Workers workers) {
        index.refuseOn(Thread.currentThread());
        workers.pool().submit(index::views);
    }

    @Override
    public boolean comeForward() {
        Optional<Shell> open = front;
        open.ifPresent(shell -> shell.getDisplay().asyncExec(() -> raise(shell)));
        return open.isPresent();
    }

    private static void raise(Shell shell) {
        if (!shell.isDisposed()) {
            shell.setMinimized(false);
            shell.forceActive();
        }
    }

    private void run(
            Display display, Workers workers, Optional<String> page, Optional<PersonId> actor, Future<?> hold) {
        List<String> notices = Collections.synchronizedList(new ArrayList<>());
        LayoutFile layout = new LayoutFile(home.folder().resolve("desk"), workers.writer(), notices::add);
        Optional<KeptLanguage> language = Optional.of(new KeptLanguage(home.folder()));
        Supplies supplies = new Supplies(places, neighbours, workers, new Session(actor), layout, files, language);
        Shell shell = new Shell(display);
        Looks looks = layout.recall(Window.LOOKS).map(Looks::of).orElse(Looks.FIRST);
        Window window = new Window(shell, supplies, looks, layout::reset);
        display.setRuntimeExceptionHandler(window::broken);
        Keys.listen(shell, new WindowKeys(window));
        new IdleLock(window, supplies).watch(shell);
        WindowBounds.follow(shell, layout);
        Follow.news(shell, news, window::newsCame);
        refuseWithout(hold);
        front = Optional.of(shell);
        shell.addDisposeListener(event -> front = Optional.empty());
        shell.open();
        // a page can put the focus only into a window that is there
        window.start(page.or(() -> lastPage(layout)).or(() -> Optional.of(StartPage.PLACE)));
        window.say(ShellWords.get("status.home", home.folder()));
        notices.forEach(window::say);
        EventLoop.until(display, () -> shell.isDisposed() || window.isUsable());
        context.registerService(UsableDesktop.class, new UsableDesktop(), UsableDesktop.phase());
        window.tellDue();
        JournalCheck.soon(window, supplies);
        EventLoop.until(display, shell::isDisposed);
    }

    private static Optional<String> lastPage(LayoutFile layout) {
        return layout.recall(Window.PAGE)
                .flatMap(kept -> kept.get("id"))
                .filter(Json.Text.class::isInstance)
                .map(id -> ((Json.Text) id).value());
    }
}
