package wickbench.plant.ui;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.TabBar;

/** The open page: its tabs, each opened when it is first chosen. */
final class PlantPart implements PagePart {
    private final PageContext context;
    private final PlantDoors doors;
    private final TabBar tabs;
    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final Map<Tab, Room> rooms = new EnumMap<>(Tab.class);

    PlantPart(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), PlantUiWords.get("page.heading"), PlantUiWords.get("page.line"));
        new ImportButton(context, doors, () -> front().reload()).into(heading.actions());
        tabs = new TabBar(
                page,
                context.theme(),
                Arrays.stream(Tab.values()).map(Tab::words).toList(),
                at -> open(Tab.values()[at]));
        body = Fit.grow(context.theme().controls().box(page, 1));
        body.setLayout(stack);
        context.onActor(actor -> rooms.values().forEach(Room::reload));
        open(Tab.DUE);
    }

    private void open(Tab tab) {
        tabs.show(tab.ordinal());
        boolean old = rooms.containsKey(tab);
        Room room = rooms.computeIfAbsent(tab, this::make);
        stack.topControl = room.control();
        body.layout(true, true);
        if (old) {
            room.reload();
        }
    }

    private Room make(Tab tab) {
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
        int colon = argument.indexOf(':');
        String code = colon < 0 ? argument : argument.substring(0, colon);
        Arrays.stream(Tab.values())
                .filter(tab -> tab.code().equals(code))
                .findFirst()
                .ifPresent(tab -> {
                    open(tab);
                    if (colon > 0) {
                        rooms.get(tab).show(argument.substring(colon + 1));
                    }
                });
    }

    @Override
    public void shown() {
        front().reload();
        front().focus();
    }

    @Override
    public void newsCame() {
        front().reload();
    }

    /** What is in front stays so in new looks. */
    @Override
    public Optional<Object> draft() {
        return Optional.of(Tab.values()[tabs.shown()]);
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Tab tab) {
            open(tab);
        }
    }

    Room front() {
        return rooms.get(Tab.values()[tabs.shown()]);
    }
}
