package wickbench.stock.ui;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.words.Coded;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.TabBar;

/** The open page: its tabs, each opened when it is first chosen. */
final class StockPart implements PagePart {
    private final PageContext context;
    private final StockDoors doors;
    private final TabBar tabs;
    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final Map<Tab, Room> rooms = new EnumMap<>(Tab.class);

    StockPart(Composite parent, PageContext context, StockDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), StockUiWords.get("page.heading"), StockUiWords.get("page.line"));
        new ReportButton(context, doors).into(heading.actions());
        tabs = new TabBar(
                page,
                context.theme(),
                Arrays.stream(Tab.values()).map(Tab::words).toList(),
                tab -> open(Tab.values()[tab]));
        body = Fit.grow(context.theme().controls().box(page, 1));
        body.setLayout(stack);
        context.onActor(actor -> rooms.values().forEach(Room::reload));
        open(Tab.LOTS);
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
            case LOTS -> new LotsRoom(body, context, doors);
            case FRIDGES -> new FridgesRoom(body, context, doors, this::show);
            case OUTLOOK -> new OutlookRoom(body, context, doors, this::show);
            case TRACE -> new TraceRoom(body, context, doors);
            case EQUIPMENT -> new EquipmentRoom(body, context, doors);
        };
    }

    /** Shows a tab by its code, or a lot by its number, or a thing of a tab as {@code fridges:F1}. */
    @Override
    public void show(String argument) {
        int colon = argument.indexOf(':');
        String code = colon < 0 ? argument : argument.substring(0, colon);
        Optional<Tab> tab = tab(code);
        open(tab.orElse(Tab.LOTS));
        if (tab.isEmpty()) {
            rooms.get(Tab.LOTS).show(argument);
        } else if (colon > 0) {
            rooms.get(tab.get()).show(argument.substring(colon + 1));
        }
    }

    private static Optional<Tab> tab(String code) {
        try {
            return Optional.of(Coded.of(Tab.class, code));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
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
        return Optional.of(tab());
    }

    @Override
    public void restore(Object draft) {
        if (draft instanceof Tab tab) {
            open(tab);
        }
    }

    private Tab tab() {
        return Tab.values()[tabs.shown()];
    }

    Room front() {
        return rooms.get(tab());
    }
}
