package wickbench.shell;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Theme;

/** The pages opened so far, one of them in front. */
final class PageStack {
    private final Composite area;
    private final StackLayout layout = new StackLayout();
    private final Theme theme;
    private final Places places;
    private final OpenPage.Means means;
    private final Map<String, OpenPage> open = new LinkedHashMap<>();
    private final Map<String, Object> drafts;
    private Optional<String> current = Optional.empty();

    /**
     * Makes an empty stack.
     *
     * @param drafts what pages left behind in the stack before this one, by id
     */
    PageStack(Composite parent, Theme theme, Places places, OpenPage.Means means, Map<String, Object> drafts) {
        this.drafts = new HashMap<>(drafts);
        this.theme = theme;
        this.places = places;
        this.means = means;
        area = new Composite(parent, SWT.NONE);
        area.setBackground(theme.color(theme.palette().ground()));
        area.setLayout(layout);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    }

    Optional<OpenPage> front() {
        return current.map(open::get);
    }

    Optional<String> current() {
        return current;
    }

    /** Brings a page to the front, opening it first if need be. */
    OpenPage show(Place place, Optional<String> argument) {
        current = Optional.of(place.id());
        boolean before = open.containsKey(place.id());
        OpenPage page = open.computeIfAbsent(place.id(), id -> new OpenPage(area, theme, place, means));
        if (before) {
            page.part().ifPresent(part -> argument.ifPresent(part::show));
        } else {
            page.open(argument, Optional.ofNullable(drafts.remove(place.id())));
        }
        front(page);
        page.comeToFront(() -> current.equals(Optional.of(place.id())));
        return page;
    }

    /** Closes a page and opens it again, as after a failure. */
    void openAnew(OpenPage page) {
        open.remove(page.id());
        page.close();
        show(page.place(), Optional.empty());
    }

    /** Closes the pages whose bundles are gone, and shows another one if the front one was among them. */
    void followPlaces() {
        List<OpenPage> gone = open.values().stream()
                .filter(page ->
                        places.find(page.id()).filter(page.place()::equals).isEmpty())
                .toList();
        for (OpenPage page : gone) {
            open.remove(page.id());
            page.close();
        }
        if (current.filter(open::containsKey).isEmpty()) {
            showFirst();
        }
    }

    /** Tells whether some page has something under way. */
    boolean busy() {
        return open.values().stream().anyMatch(OpenPage::busy);
    }

    /** Returns what the pages would leave behind for those that take their place, with what nobody has taken up yet. */
    Map<String, Object> drafts() {
        Map<String, Object> left = new HashMap<>(drafts);
        open.forEach((id, page) -> page.part().flatMap(PagePart::draft).ifPresent(draft -> left.put(id, draft)));
        return left;
    }

    void closeAll() {
        open.values().forEach(OpenPage::close);
        open.clear();
    }

    private void showFirst() {
        places.all().stream().findFirst().ifPresentOrElse(place -> show(place, Optional.empty()), this::showNothing);
    }

    private void showNothing() {
        current = Optional.empty();
        layout.topControl = new EmptyState(
                area,
                theme,
                pen -> pen.box(3, 4, 18, 16, 2).line(3, 9, 21, 9),
                ShellWords.get("no-pages.title"),
                ShellWords.get("no-pages.text"));
        area.layout();
    }

    private void front(OpenPage page) {
        layout.topControl = page.box();
        area.layout();
    }
}
