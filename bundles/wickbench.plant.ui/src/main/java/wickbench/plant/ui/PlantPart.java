package wickbench.plant.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Heading;
import wickbench.widgets.Room;
import wickbench.widgets.TabStack;

/** The open page: its tabs, each opened when it is first chosen. */
final class PlantPart implements PagePart {
    private final PageContext context;
    private final PlantDoors doors;
    private final TabStack<Tab> tabs;

    PlantPart(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), PlantUiWords.get("page.heading"), PlantUiWords.get("page.line"));
        new ImportButton(context, doors, () -> front().reload()).into(heading.actions());
        tabs = new TabStack<>(page, context.theme(), Tab.class, Tab::words, this::make);
        context.onActor(actor -> tabs.reload());
    }

    private Room make(Tab tab, Composite body) {
        return switch (tab) {
            case DUE -> new DueRoom(body, context, doors);
            case ORDER -> new OrderRoom(body, context, doors);
            case CHANGES -> new ChangesRoom(body, context, doors);
            case PICTURE -> new PictureRoom(body, context, doors);
            case CLEANS -> new CleansRoom(body, context, doors);
            case PRODUCTS -> new ProductsRoom(body, context, doors);
        };
    }

    /** Shows a tab by its code, or a thing of a tab as {@code changes:L2}. */
    @Override
    public void show(String argument) {
        tabs.show(argument);
    }

    @Override
    public void shown() {
        front().reload();
        focus();
    }

    @Override
    public void focus() {
        front().focus();
    }

    @Override
    public void newsCame() {
        front().reload();
    }

    /** What is in front stays so in new looks. */
    @Override
    public Optional<Object> draft() {
        return Optional.of(tabs.shown());
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Tab tab) {
            tabs.open(tab);
        }
    }

    Room front() {
        return tabs.front();
    }
}
