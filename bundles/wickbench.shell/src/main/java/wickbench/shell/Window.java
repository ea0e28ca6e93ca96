package wickbench.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.json.Json;
import wickbench.widgets.Theme;

/** The window: bars, rail and pages, made anew when its looks change. */
final class Window implements OpenPage.Surroundings {
    static final String LOOKS = "looks";
    static final String PAGE = "page";
    private static final String FIRST_STEPS = "first-steps";
    private static final int MINIMUM_WIDTH = 800;
    private static final int MINIMUM_HEIGHT = 560;

    private final Shell shell;
    private final Supplies supplies;
    private final Runnable resetLayout;
    private final JobBoard board = new JobBoard();
    private final Runnable placesChanged;
    private Looks looks;
    private Parts parts;
    private boolean nativeDark = Display.isSystemDarkTheme();
    private boolean dueTold;
    private boolean firstStepsDone;

    /** What stands in the window at the moment. */
    private record Parts(
            Theme theme, TopBar top, AlarmBar alarm, Rail rail, PageStack pages, StatusBar status, DeskFacts facts) {}

    /**
     * Fills a shell.
     *
     * @param resetLayout forgets everything that was remembered of the layout
     */
    Window(Shell shell, Supplies supplies, Looks looks, Runnable resetLayout) {
        this.shell = shell;
        this.supplies = supplies;
        this.looks = looks;
        this.resetLayout = resetLayout;
        firstStepsDone = supplies.memory().recall(FIRST_STEPS).isPresent();
        shell.setText("Wickbench");
        shell.setImages(WindowIcon.images(shell.getDisplay()));
        shell.setMinimumSize(MINIMUM_WIDTH, MINIMUM_HEIGHT);
        build(Map.of());
        placesChanged = () -> onScreen(this::followPlaces);
        supplies.places().onChange(placesChanged);
        shell.addListener(SWT.Dispose, event -> {
            supplies.places().forget(placesChanged);
            parts.pages().closeAll();
        });
    }

    Shell shell() {
        return shell;
    }

    JobBoard board() {
        return board;
    }

    Looks looks() {
        return looks;
    }

    Optional<OpenPage> front() {
        return parts.pages().front();
    }

    /** Tells whether the page in front shows what it has to show, or why it cannot; a desk without pages is usable too. */
    boolean isUsable() {
        return front().map(page -> page.settled() || page.failure().isPresent()).orElseGet(() -> places().isEmpty());
    }

    StatusBar status() {
        return parts.status();
    }

    TopBar top() {
        return parts.top();
    }

    Rail rail() {
        return parts.rail();
    }

    List<Place> places() {
        return supplies.places().all();
    }

    /** Tells what is due too, from now on: it is reckoned from all records, and until the first page is usable that has the machine to itself. */
    void tellDue() {
        dueTold = true;
        parts.facts().due();
        if (firstStepsDone) {
            // a part that was added since may bring further ones
            parts.facts().firstSteps();
        }
    }

    boolean firstStepsDone() {
        return firstStepsDone;
    }

    /** Takes the page of first steps out of the rail, or puts it back; keys and the menu of the view lead to it either way. */
    void firstStepsDone(boolean done) {
        if (done != firstStepsDone) {
            firstStepsDone = done;
            if (done) {
                supplies.memory().keep(FIRST_STEPS, Json.object().with("done", true));
            } else {
                supplies.memory().forget(FIRST_STEPS);
            }
            followRail();
        }
    }

    /** Returns what stands in the rail: a page that was shown while steps were left stays as long as it is in front. */
    private List<Place> railed() {
        Optional<String> current = parts.pages().current();
        return supplies.places().all().stream()
                .filter(place -> !firstStepsDone
                        || !place.id().equals(StartPage.PLACE)
                        || current.equals(Optional.of(place.id())))
                .toList();
    }

    private void followRail() {
        parts.rail().show(railed(), parts.pages().current());
    }

    /** Shows the first place there is, or the one told if it is there. */
    void start(Optional<String> page) {
        page.flatMap(supplies.places()::find).ifPresentOrElse(place -> show(place.id(), Optional.empty()), () -> {
            parts.pages().followPlaces();
            followRail();
        });
    }

    /** Makes everything anew in other looks; the page in front stays in front. Work under way is not cut off for it. */
    void look(Looks next) {
        if (parts.pages().busy()) {
            say(ShellWords.get("view.busy"));
            return;
        }
        looks = next;
        supplies.memory().keep(LOOKS, next.toJson());
        Optional<String> current = parts.pages().current();
        Map<String, Object> drafts = parts.pages().drafts();
        parts.pages().closeAll();
        Theme old = parts.theme();
        Optional<AlarmBar.Alarm> alarm = parts.alarm().shown();
        for (Control child : shell.getChildren()) {
            child.dispose();
        }
        build(drafts);
        alarm.ifPresent(told -> alarm(told.text(), told.details()));
        old.dispose();
        shell.layout(true, true);
        start(current);
    }

    /** Says across the window that something broke; the rest of the window works on. */
    void broken(Throwable failure) {
        alarm(Failures.plain(failure), Failures.details(failure));
    }

    /** Says across the window what must not be overlooked, and stays until a person dismisses it. */
    void alarm(String text, String details) {
        parts.alarm().show(text, details);
    }

    /** Puts the focus on what broke; tells whether anything did. */
    boolean focusAlarm() {
        return parts.alarm().focus();
    }

    /** Forgets the layout and starts over with the first one. */
    void resetLayout() {
        resetLayout.run();
        look(Looks.FIRST);
        say(ShellWords.get("view.reset-done"));
    }

    /** Opens the guide at what it says of the page in front. */
    void openGuide() {
        say(Guidebook.installed()
                .open(front().map(page -> page.place().page().guide()).orElse("guide.html")));
    }

    @Override
    public void say(String text) {
        parts.status().say(text);
    }

    @Override
    public void show(String page, Optional<String> argument) {
        Optional<Place> place = supplies.places().find(page);
        if (place.isEmpty()) {
            say(ShellWords.get("page.absent", page));
            return;
        }
        parts.pages().show(place.get(), argument);
        parts.rail().mark(Optional.of(page));
        // the place that was pressed must outlive its own event
        onScreen(this::followRail);
        supplies.memory().keep(PAGE, Json.object().with("id", page));
    }

    @Override
    public boolean has(String page) {
        return supplies.places().find(page).isPresent();
    }

    @Override
    public void openAnew(OpenPage page) {
        parts.pages().openAnew(page);
    }

    private void build(Map<String, Object> drafts) {
        Theme theme = looks.on(shell.getDisplay());
        followLight();
        shell.setBackground(theme.color(theme.palette().ground()));
        shell.setLayout(tight(1));
        WindowMenus menus = new WindowMenus(this, supplies);
        TopBar top = new TopBar(shell, theme, menus::person, menus::view);
        AlarmBar alarm = new AlarmBar(shell, theme);
        Composite middle = new Composite(shell, SWT.NONE);
        middle.setBackground(shell.getBackground());
        middle.setLayout(tight(2));
        middle.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Rail rail = new Rail(middle, theme, page -> show(page, Optional.empty()));
        PageStack pages =
                new PageStack(middle, theme, supplies.places(), new OpenPage.Means(supplies, board, this), drafts);
        Footer footer = new Footer(shell, theme, board);
        DeskFacts facts = new DeskFacts(this, top, supplies, board);
        parts = new Parts(theme, top, alarm, rail, pages, footer.status(), facts);
        followRail();
        facts.show();
        if (dueTold) {
            facts.due();
        }
    }

    /** The system's parts load their whole theme anew even when it stays the same, so they are told only what changes. */
    private void followLight() {
        if (looks.dark() != nativeDark) {
            NativeLight.prefer(looks.dark());
            nativeDark = looks.dark();
        }
    }

    /** Lets the page in front load anew, unless it is busy: then it has just done so, or will say what it did. */
    void newsCame() {
        front().filter(page -> !page.busy()).flatMap(OpenPage::part).ifPresent(PagePart::newsCame);
    }

    private void followPlaces() {
        parts.pages().followPlaces();
        followRail();
        if (dueTold) {
            parts.facts().firstSteps();
        }
    }

    private void onScreen(Runnable act) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    act.run();
                }
            });
        }
    }

    private static GridLayout tight(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        layout.verticalSpacing = 0;
        return layout;
    }
}
