package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.lot.LotId;
import wickbench.shell.PageContext;
import wickbench.stock.Lot;
import wickbench.widgets.EmptyState;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Room;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;

/** The lots: a table first expired first, and beside it one lot in full or the form of what is done. */
final class LotsRoom implements Room {
    private final PageContext context;
    private final StockDoors doors;
    private final LotDesk desk;
    private final KitForms kits;
    private final Composite room;
    private Optional<LotDesk.Known> known = Optional.empty();
    private Optional<Open> open = Optional.empty();
    private Optional<LotId> wanted = Optional.empty();
    private Optional<Job> finding = Optional.empty();
    private Optional<ReceiveForm> receiving = Optional.empty();
    private boolean form;
    private volatile boolean all;

    /** What there is once a kit is defined. */
    private record Open(Composite notes, TableKit<Lot> table, Side side) {}

    LotsRoom(Composite parent, PageContext context, StockDoors doors) {
        this.context = context;
        this.doors = doors;
        desk = new LotDesk(doors);
        room = context.theme().controls().box(parent, 1);
        kits = new KitForms(context, doors, this::reload);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        var actor = context.actor();
        context.jobs().run(StockUiWords.get("lots.reading"), progress -> desk.known(actor), this::take);
    }

    private void take(LotDesk.Known now) {
        known = Optional.of(now);
        if (now.kits().isEmpty()) {
            open = Optional.empty();
            nothingYet(now);
            return;
        }
        if (open.isEmpty()) {
            clear(room);
            fill(now);
        } else {
            open.get().table().reload();
        }
        notes(now);
        room.layout(true, true);
    }

    private void nothingYet(LotDesk.Known now) {
        clear(room);
        EmptyState empty = Fit.grow(new EmptyState(
                room,
                context.theme(),
                pen -> pen.line(3, 11, 21, 11)
                        .line(3, 20, 21, 20)
                        .box(6, 5, 5, 6, 1)
                        .box(12, 14, 6, 6, 1),
                StockUiWords.get("empty.title"),
                StockUiWords.get("empty.text")));
        empty.offer(StockUiWords.get("kit.open"), () -> kits.choose(now.rights()));
        room.layout(true, true);
        context.ready();
    }

    private void fill(LotDesk.Known now) {
        Composite bar = context.theme().controls().row(room);
        context.theme().controls().mainButton(bar, StockUiWords.get("receive.open"), this::receive);
        context.theme()
                .controls()
                .button(
                        bar,
                        StockUiWords.get("kit.open"),
                        () -> kits.choose(known.orElseThrow().rights()));
        Button more = context.theme().controls().check(bar, StockUiWords.get("lots.all"));
        more.addListener(SWT.Selection, event -> {
            all = more.getSelection();
            open.ifPresent(shown -> shown.table().reload());
        });
        Composite notes = Fit.wide(context.theme().controls().box(room, 1));
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        TableKit<Lot> table = new TableKit<>(sash, context, new LotTable(now.today()).of(() -> desk.lots(all)));
        Side side = new Side(sash, context.theme());
        sash.setWeights(58, 42);
        open = Optional.of(new Open(notes, table, side));
        table.onSelect(rows -> rows.stream().findFirst().map(Lot::id).ifPresent(this::choose));
        table.onLoaded(this::loaded);
        if (!now.any()) {
            receive();
        }
    }

    /** Says what nobody received although strips of it were read. */
    private void notes(LotDesk.Known now) {
        Composite notes = open.orElseThrow().notes();
        clear(notes);
        now.unreceived().stream()
                .limit(2)
                .forEach(lot -> Fit.wide(new Note(
                        notes,
                        context.theme(),
                        Meaning.CAUTION,
                        StockUiWords.get("lots.unreceived", lot.lot(), lot.kit(), lot.strips()))));
        ((org.eclipse.swt.layout.GridData) notes.getLayoutData()).exclude =
                now.unreceived().isEmpty();
        notes.setVisible(!now.unreceived().isEmpty());
    }

    /** Shows the first lot when none is chosen, so that the side is never blank without a reason. */
    private void loaded() {
        Open now = open.orElseThrow();
        List<Lot> rows = now.table().rows();
        if (form) {
            context.ready();
            return;
        }
        Optional<Lot> again = wanted.flatMap(
                id -> rows.stream().filter(lot -> lot.id().equals(id)).findFirst());
        if (again.isPresent()) {
            if (now.table().selected().isEmpty()) {
                now.table().select(again.get());
            }
            choose(again.get().id());
        } else if (wanted.isPresent()) {
            choose(wanted.get());
        } else if (!rows.isEmpty()) {
            now.table().select(rows.get(0));
        } else {
            now.side().clear();
            context.ready();
        }
    }

    private void choose(LotId id) {
        wanted = Optional.of(id);
        LotDesk.Known now = known.orElseThrow();
        finding.ifPresent(Job::cancel);
        finding = Optional.of(context.jobs()
                .run(StockUiWords.get("lots.reading"), progress -> desk.find(id, now), found -> {
                    if (found.isPresent()) {
                        show(found.get());
                    } else {
                        context.say(StockUiWords.get("lots.absent", id));
                        context.ready();
                    }
                }));
    }

    private void show(LotDesk.Shown shown) {
        form = false;
        Side side = open.orElseThrow().side();
        side.fill(content -> new LotCard(content, context.theme(), shown)
                .fill(below -> new LotActBar(
                                context.theme(),
                                shown.lot(),
                                shown.differs(),
                                LotAct.next(shown.lot(), shown.known().today(), shown.differs()),
                                act -> act(act, shown))
                        .fill(below)));
        context.ready();
    }

    private void act(LotAct act, LotDesk.Shown shown) {
        form = true;
        Side side = open.orElseThrow().side();
        Consumer<String> done = said -> {
            context.say(said);
            form = false;
            reload();
        };
        side.fill(content -> new LotForms(
                        context,
                        doors,
                        shown,
                        side::measure,
                        () -> choose(shown.lot().id()),
                        done)
                .open(content, act));
    }

    /** Begins to take a delivery in. */
    void receive() {
        form = true;
        Side side = open.orElseThrow().side();
        ReceiveForm asked = new ReceiveForm(context, doors, known.orElseThrow(), side::measure);
        receiving = Optional.of(asked);
        side.fill(content -> asked.fill(content, this::leave, this::received));
        context.ready();
    }

    private void leave() {
        form = false;
        wanted.ifPresentOrElse(this::choose, this::loaded);
    }

    private void received(Lot lot) {
        form = false;
        wanted = Optional.of(lot.id());
        context.say(StockUiWords.get("receive.done", lot.id()));
        reload();
    }

    @Override
    public void focus() {
        if (form) {
            receiving
                    .map(ReceiveForm::scanField)
                    .filter(field -> !field.isDisposed())
                    .ifPresent(Control::setFocus);
        } else {
            open.ifPresent(now -> now.table().focus());
        }
    }

    /** Shows the lot with this number. */
    @Override
    public void show(String argument) {
        wanted = Optional.of(new LotId(argument));
        form = false;
        open.ifPresent(now -> loaded());
    }

    private static void clear(Composite some) {
        for (Control old : some.getChildren()) {
            old.dispose();
        }
    }

    Optional<TableKit<Lot>> table() {
        return open.map(Open::table);
    }

    Optional<Side> side() {
        return open.map(Open::side);
    }
}
