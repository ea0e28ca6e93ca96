package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.shell.PageContext;
import wickbench.stock.Outlook;
import wickbench.stock.StockTerms;
import wickbench.widgets.ChartView;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Room;
import wickbench.widgets.Shape;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The outlook: how far each kit goes, and for one of them how its strips run down. */
final class OutlookRoom implements Room {
    private final PageContext context;
    private final StockDoors doors;
    private final Consumer<String> lot;
    private final Composite room;
    private volatile List<Outlook> outlooks = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();

    private record Known(List<Outlook> outlooks, SiteTimes times, LocalDate today) {}

    private record Open(TableKit<Outlook> table, ChartView chart, Side side, Known known) {}

    /** @param lot goes to a lot by its number */
    OutlookRoom(Composite parent, PageContext context, StockDoors doors, Consumer<String> lot) {
        this.context = context;
        this.doors = doors;
        this.lot = lot;
        room = context.theme().controls().box(parent, 1);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        context.jobs().run(StockUiWords.get("outlook.reading"), progress -> known(), this::take);
    }

    private Known known() {
        var now = doors.clock().instant();
        SiteTimes times = new SiteTimes(doors.room().zone());
        return new Known(doors.room().outlook(now), times, times.day(now));
    }

    private void take(Known known) {
        outlooks = known.outlooks();
        if (open.isEmpty()) {
            fill(known);
        } else {
            open.get().table().reload();
        }
        room.layout(true, true);
    }

    private void fill(Known known) {
        Theme theme = context.theme();
        TableKit<Outlook> table = new TableKit<>(room, context, new OutlookTable(known.today()).of(() -> outlooks));
        GridData top = new GridData(SWT.FILL, SWT.FILL, true, false);
        top.heightHint = theme.px(220);
        table.control().setLayoutData(top);
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(theme.metrics().grid(1));
        ChartView chart = new ChartView(sash, context, doors.painter());
        Side side = new Side(sash, theme);
        sash.setWeights(64, 36);
        Label how = theme.controls().text(room, Type.SMALL, StockTerms.outlookHow());
        how.setForeground(theme.color(theme.palette().quiet()));
        open = Optional.of(new Open(table, chart, side, known));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onLoaded(this::loaded);
    }

    private void loaded() {
        TableKit<Outlook> table = open.orElseThrow().table();
        Optional<Outlook> again = table.rows().stream()
                .filter(row -> chosen.filter(row.kit()::equals).isPresent())
                .findFirst()
                .or(() -> table.rows().stream().findFirst());
        again.ifPresentOrElse(
                row -> {
                    if (!table.selected().contains(row)) {
                        table.select(row);
                    }
                    choose(row);
                },
                context::ready);
    }

    /** Shows the kit with this name. */
    @Override
    public void show(String argument) {
        chosen = Optional.of(argument);
        open.ifPresent(now -> loaded());
    }

    private void choose(Outlook outlook) {
        chosen = Optional.of(outlook.kit());
        Open now = open.orElseThrow();
        now.chart().chart(RunDown.of(outlook, now.known().times().zone()));
        now.side().fill(content -> card(content, outlook, now.known()));
        context.ready();
    }

    private void card(Composite content, Outlook outlook, Known known) {
        Theme theme = context.theme();
        Composite card = Fit.wide(theme.controls().card(content, 1));
        theme.controls().text(card, Type.STRONG, outlook.kit());
        Mark order = new OutlookTable(known.today()).order(outlook);
        String words = outlook.orderBy().isEmpty()
                ? order.word()
                : StockUiWords.get("outlook.order", order.word(), outlook.boxes());
        Fit.wide(new MarkedLine(card, theme, new Mark("", order.shape(), order.meaning()), words));
        new Facts(card, theme)
                .add(word("usable"), Long.toString(outlook.strips()))
                .add(
                        word("demand"),
                        StockUiWords.get(
                                "outlook.demand",
                                ExcursionTable.number(outlook.demand()),
                                ExcursionTable.number(outlook.deviation()),
                                outlook.days()))
                .add(word("method"), StockUiWords.get("outlook.method." + outlook.method()))
                .add(
                        word("runs-out"),
                        outlook.runsOut().map(LocalDate::toString).orElse(StockUiWords.get("outlook.beyond")));
        outlook.waste().forEach(waste -> {
            Fit.wide(new MarkedLine(
                    card,
                    theme,
                    new Mark("", Shape.DIAMOND, Meaning.CAUTION),
                    StockUiWords.get("outlook.waste", waste.lot(), waste.expiry(), waste.strips())));
            theme.controls()
                    .buttonOfMany(card, StockUiWords.get("imported.lot", waste.lot()), () -> lot.accept(waste.lot()))
                    .setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
        });
    }

    private static String word(String name) {
        return StockUiWords.get("fact.outlook." + name);
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
