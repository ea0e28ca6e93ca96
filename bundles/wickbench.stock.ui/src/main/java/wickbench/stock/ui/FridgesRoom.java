package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.shell.PageContext;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges.Imported;
import wickbench.widgets.ChartView;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Names;
import wickbench.widgets.Room;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;

/** The fridges: what one of them did as a chart, its excursions below, its lots and the forms beside it. */
final class FridgesRoom implements Room {
    private final PageContext context;
    private final StockDoors doors;
    private final FridgeDesk desk;
    private final Consumer<String> lot;
    private final Composite room;
    private Optional<FridgeDesk.Known> known = Optional.empty();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private Optional<Integer> days = Optional.empty();
    private boolean form;
    private volatile List<Excursion> found = List.of();

    /** What there is once it was read. */
    private record Open(Combo fridge, Combo span, ChartView chart, TableKit<Excursion> excursions, Side side) {}

    /** @param lot goes to a lot by its number */
    FridgesRoom(Composite parent, PageContext context, StockDoors doors, Consumer<String> lot) {
        this.context = context;
        this.doors = doors;
        this.lot = lot;
        desk = new FridgeDesk(doors);
        room = context.theme().controls().box(parent, 1);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        var actor = context.actor();
        var which = chosen;
        var back = days;
        context.jobs()
                .run(
                        StockUiWords.get("fridge.reading"),
                        progress -> desk.known(which, back, actor),
                        now -> take(now, Optional.empty()));
    }

    private void take(FridgeDesk.Known now, Optional<Imported> imported) {
        known = Optional.of(now);
        if (open.isEmpty()) {
            fill(now);
        }
        Open shown = open.orElseThrow();
        chosen = now.trace().map(trace -> trace.fridge().id());
        shown.fridge()
                .setItems(now.fridges().stream()
                        .map(fridge -> fridge.id() + ", " + fridge.name())
                        .toArray(String[]::new));
        now.trace()
                .map(FridgeTrace::fridge)
                .ifPresent(fridge -> shown.fridge()
                        .select(now.fridges().stream().map(Fridge::id).toList().indexOf(fridge.id())));
        shown.span().select(FridgeDesk.SPANS.indexOf(now.days()));
        now.trace().ifPresent(trace -> {
            found = trace.excursions();
            shown.chart().chart(FridgeChart.of(trace, now.times().zone()));
            shown.excursions().reload();
        });
        if (!form) {
            beside(now, imported);
        }
        room.layout(true, true);
        context.ready();
    }

    private void beside(FridgeDesk.Known now, Optional<Imported> imported) {
        Side side = open.orElseThrow().side();
        if (now.trace().isEmpty()) {
            register();
            return;
        }
        side.fill(content -> {
            FridgeCard card = new FridgeCard(content, context.theme(), now.times());
            imported.ifPresent(done -> card.imported(done, lot));
            card.fill(now.trace().get());
        });
    }

    private void fill(FridgeDesk.Known now) {
        Controls controls = context.theme().controls();
        Composite bar = controls.row(room);
        Combo fridge = Names.give(controls.choice(bar, List.of()), () -> StockUiWords.get("fridge.which"));
        fridge.addListener(SWT.Selection, event -> choose(fridge.getSelectionIndex()));
        Combo span = Names.give(
                controls.choice(
                        bar,
                        FridgeDesk.SPANS.stream()
                                .map(back -> StockUiWords.get("fridge.days", back))
                                .toList()),
                () -> StockUiWords.get("fridge.span"));
        span.addListener(SWT.Selection, event -> {
            days = Optional.of(FridgeDesk.SPANS.get(span.getSelectionIndex()));
            reload();
        });
        controls.mainButton(bar, StockUiWords.get("import.open"), () -> act(FridgeForms::choose));
        controls.button(bar, StockUiWords.get("measured.open"), () -> act(FridgeForms::measured));
        controls.button(bar, StockUiWords.get("register.open"), this::register);
        SashForm sash = Fit.grow(sash(room, SWT.HORIZONTAL));
        SashForm left = sash(sash, SWT.VERTICAL);
        ChartView chart = new ChartView(left, context, doors.painter());
        TableKit<Excursion> excursions = new TableKit<>(left, context, new ExcursionTable(now.times()).of(() -> found));
        left.setWeights(58, 42);
        Side side = new Side(sash, context.theme());
        sash.setWeights(60, 40);
        open = Optional.of(new Open(fridge, span, chart, excursions, side));
    }

    private SashForm sash(Composite parent, int style) {
        SashForm sash = new SashForm(parent, style);
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        return sash;
    }

    private void choose(int at) {
        if (at >= 0) {
            chosen = Optional.of(known.orElseThrow().fridges().get(at).id());
            form = false;
            reload();
        }
    }

    private void act(BiConsumer<FridgeForms, Fridge> what) {
        FridgeDesk.Known now = known.orElseThrow();
        now.trace().map(FridgeTrace::fridge).ifPresent(fridge -> {
            form = true;
            what.accept(forms(now), fridge);
        });
    }

    private FridgeForms forms(FridgeDesk.Known now) {
        return new FridgeForms(context, doors, now, open.orElseThrow().side(), this::leave, this::imported);
    }

    private void register() {
        form = true;
        forms(known.orElseThrow()).register(fridge -> {
            context.say(StockUiWords.get("register.done", fridge.id()));
            chosen = Optional.of(fridge.id());
            form = false;
            reload();
        });
    }

    private void leave() {
        form = false;
        if (known.orElseThrow().trace().isPresent()) {
            beside(known.orElseThrow(), Optional.empty());
        }
    }

    /** Shows the time that the file tells of, so that what it found is in sight. */
    private void imported(Imported done) {
        form = false;
        if (!done.complete()) {
            context.say(StockUiWords.get("imported.stopped"));
            leave();
            return;
        }
        long back = java.time.Duration.between(done.from(), known.orElseThrow().now())
                        .toDays()
                + 1;
        days = Optional.of(FridgeDesk.span(back));
        var actor = context.actor();
        var which = chosen;
        var span = days;
        context.jobs()
                .run(
                        StockUiWords.get("fridge.reading"),
                        progress -> desk.known(which, span, actor),
                        now -> take(now, Optional.of(done)));
    }

    @Override
    public void focus() {
        open.map(Open::fridge).ifPresent(Control::setFocus);
    }

    /** Shows the fridge with this id. */
    @Override
    public void show(String argument) {
        chosen = Optional.of(argument);
        reload();
    }

    /** Opens the form that takes a logger's file in. */
    void read(String file) {
        act((forms, fridge) -> forms.read(fridge, file, ""));
    }
}
