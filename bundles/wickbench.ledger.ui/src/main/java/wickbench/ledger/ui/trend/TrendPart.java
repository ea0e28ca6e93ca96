package wickbench.ledger.ui.trend;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.chart.Chart;
import wickbench.api.person.PersonId;
import wickbench.ledger.trend.Trending.Asked;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.ledger.trend.Trending.Kind;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.ledger.ui.trend.TrendDoors.Rights;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Fit;
import wickbench.widgets.Heading;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Scroller;
import wickbench.widgets.TabBar;
import wickbench.widgets.TableKit;

/** The open page: the trend at the left; at the right the strips behind a point of it. */
final class TrendPart implements PagePart {
    private final PageContext context;
    private final TrendDoors doors;
    private final Composite page;
    private final TrendBar bar;
    private final TabBar charts;
    private final Scroller left;
    private final BehindSide right;
    /** Only the newest question is answered. */
    private int asked;

    TrendPart(Composite parent, PageContext context, TrendDoors doors) {
        this.context = context;
        this.doors = doors;
        page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), TrendWords.get("heading"), TrendWords.get("line"));
        bar = new TrendBar(page, context.theme(), this::load);
        List<String> names = Arrays.stream(Kind.values())
                .map(kind -> TrendWords.get("chart." + kind.code()))
                .toList();
        charts = Fit.wide(new TabBar(page, context.theme(), names, kind -> load()));
        SashForm sash = Fit.grow(new SashForm(page, SWT.HORIZONTAL));
        sash.setBackground(page.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        left = new Scroller(sash, context.theme());
        right = new BehindSide(sash, context, doors);
        sash.setWeights(64, 36);
        context.onActor(actor -> load());
        load();
    }

    /** What is shown of a trend, all of it worked out behind the screen. */
    private record Worked(Trend trend, Optional<Chart> plot, Rights rights, Trend whole) {}

    private void load() {
        int mine = ++asked;
        Asked question;
        try {
            question = new Asked(bar.filter(), bar.events(), Kind.values()[charts.shown()]);
        } catch (IllegalArgumentException e) {
            refuse(e.getMessage());
            return;
        }
        Optional<PersonId> actor = context.actor();
        context.jobs().run(TrendWords.get("reckoning"), progress -> worked(question, actor), worked -> {
            if (mine == asked) {
                take(worked);
            }
        });
    }

    private Worked worked(Asked question, Optional<PersonId> actor) {
        Trend trend = doors.trending().of(question);
        Trend whole = doors.trending().of(new Asked(wickbench.ledger.Filter.ALL, question.events(), Kind.P));
        Optional<Chart> plot = trend.answer()
                .flatMap(answer -> answer.plot().map(Supplier::get))
                .map(chart -> NamedChart.of(
                        chart,
                        trend.marks(),
                        TrendWords.get("chart." + question.kind().code()),
                        TrendWords.get(question.kind().byWeek() ? "axis.week" : "axis.event")));
        return new Worked(trend, plot, doors.rights(actor), whole);
    }

    private void take(Worked worked) {
        bar.offer(worked.whole());
        clear(left.content());
        BaseCard base = new BaseCard(context, doors, worked.rights(), page.getShell(), this::load);
        new TrendView(left.content(), context, doors, choice -> right.choose(worked.trend(), choice))
                .fill(worked.trend(), worked.plot(), base);
        left.measure();
        left.reveal(left.content().getChildren()[0]);
        right.blank();
        page.layout(true, true);
        context.ready();
    }

    /** One clear line in place of the trend. */
    private void refuse(String why) {
        clear(left.content());
        Fit.wide(new Note(left.content(), context.theme(), Meaning.CAUTION, why.replace("&", "&&")));
        left.measure();
        context.ready();
    }

    private static void clear(Composite some) {
        for (Control old : some.getChildren()) {
            old.dispose();
        }
    }

    /** Shows a chart by its code, such as {@code g}. */
    @Override
    public void show(String argument) {
        Arrays.stream(Kind.values())
                .filter(kind -> kind.code().equals(argument))
                .findFirst()
                .ifPresent(kind -> {
                    charts.show(kind.ordinal());
                    load();
                });
    }

    @Override
    public void focus() {
        bar.first().setFocus();
    }

    @Override
    public void newsCame() {
        if (right.list().isEmpty()) {
            load();
        }
    }

    TrendBar bar() {
        return bar;
    }

    TabBar charts() {
        return charts;
    }

    Optional<TableKit<Behind>> behind() {
        return right.list();
    }

    Scroller left() {
        return left;
    }
}
