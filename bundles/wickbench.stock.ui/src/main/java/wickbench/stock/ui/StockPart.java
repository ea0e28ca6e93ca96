package wickbench.stock.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Heading;
import wickbench.widgets.Room;
import wickbench.widgets.TabStack;

/** The open page: its tabs, each opened when it is first chosen. */
final class StockPart implements PagePart {
    private final PageContext context;
    private final StockDoors doors;
    private final TabStack<Tab> tabs;

    StockPart(Composite parent, PageContext context, StockDoors doors) {
        this.context = context;
        this.doors = doors;
        Composite page = context.theme().controls().box(parent, 1);
        Heading heading =
                new Heading(page, context.theme(), StockUiWords.get("page.heading"), StockUiWords.get("page.line"));
        new ReportButton(context, doors).into(heading.actions());
        tabs = new TabStack<>(page, context.theme(), Tab.class, Tab::words, this::make);
        context.onActor(actor -> tabs.reload());
    }

    private Room make(Tab tab, Composite body) {
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
        if (!tabs.show(argument)) {
            tabs.open(Tab.LOTS).show(argument);
        }
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
