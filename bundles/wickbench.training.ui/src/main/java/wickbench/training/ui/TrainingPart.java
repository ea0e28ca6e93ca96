package wickbench.training.ui;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.KeyHint;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.TabBar;

/** The open page: its tabs, each opened when it is first chosen. */
final class TrainingPart implements PagePart {
    private final PageContext context;
    private final TrainingDoors doors;
    private final Heading heading;
    private final TabBar tabs;
    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final Map<Tab, View> views = new EnumMap<>(Tab.class);

    /** What goes over to a new look: what is in front, and what is half done in each view. */
    private record Draft(Tab front, Map<Tab, Object> of) {}

    TrainingPart(Composite parent, PageContext context, TrainingDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        heading = new Heading(page, context.theme(), TrainingUiWords.get("page.heading"), "");
        tabs = new TabBar(
                page,
                context.theme(),
                Arrays.stream(Tab.values()).map(Tab::words).toList(),
                tab -> open(Tab.values()[tab]));
        body = Fit.grow(context.theme().controls().box(page, 1));
        body.setLayout(stack);
        context.onActor(actor -> views.values().forEach(View::actor));
        open(Tab.SKILLS);
    }

    private void open(Tab tab) {
        tabs.show(tab.ordinal());
        heading.line(TrainingUiWords.get("line." + tab.code()));
        boolean old = views.containsKey(tab);
        View view = views.computeIfAbsent(tab, this::make);
        stack.topControl = view.control();
        body.layout(true, true);
        if (old) {
            view.refresh();
        }
    }

    private View make(Tab tab) {
        return switch (tab) {
            case SKILLS -> new SkillsView(body, context, doors);
            case ROUNDS -> new RoundsView(body, context, doors, person -> show(person.value()));
            case DRILL -> new DrillView(body, context, doors);
        };
    }

    /** Shows a tab by its code, a thing of it as {@code rounds:spring}, or one person of the matrix by their id. */
    @Override
    public void show(String argument) {
        int colon = argument.indexOf(':');
        String code = colon < 0 ? argument : argument.substring(0, colon);
        Optional<Tab> tab = Arrays.stream(Tab.values())
                .filter(each -> each.code().equals(code))
                .findFirst();
        open(tab.orElse(Tab.SKILLS));
        if (tab.isEmpty()) {
            view().show(argument);
        } else if (colon > 0) {
            view().show(argument.substring(colon + 1));
        }
        view().focus();
    }

    @Override
    public void focus() {
        view().focus();
    }

    @Override
    public void newsCame() {
        view().refresh();
    }

    @Override
    public List<KeyHint> keys() {
        return Stream.of("start", "back")
                .map(key ->
                        new KeyHint(TrainingUiWords.get("keys." + key + ".key"), TrainingUiWords.get("keys." + key)))
                .toList();
    }

    @Override
    public Optional<Object> draft() {
        Map<Tab, Object> half = new EnumMap<>(Tab.class);
        views.forEach((tab, view) -> view.draft().ifPresent(draft -> half.put(tab, draft)));
        return Optional.of(new Draft(front(), half));
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Draft kept) {
            kept.of().forEach((tab, half) -> {
                open(tab);
                view().restore(half);
            });
            open(kept.front());
        }
    }

    private Tab front() {
        return Tab.values()[tabs.shown()];
    }

    /** Returns the view that is shown. */
    View view() {
        return views.get(front());
    }

    /** Returns the tabs. */
    TabBar tabs() {
        return tabs;
    }

    /** Returns what stands below the tabs. */
    Composite body() {
        return body;
    }
}
