package wickbench.ledger.ui.trend;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.widgets.Composite;
import wickbench.ledger.trend.Trending;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.shell.PageContext;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.RowSource;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;

/** The strips behind a mark; one leads to its result in the ledger. */
record BehindList(PageContext context, ZoneId zone) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    TableKit<Behind> into(Composite parent, List<Behind> strips) {
        List<Column<Behind>> columns = List.of(
                Column.of(
                        "when",
                        TrendWords.get("column.when"),
                        130,
                        each -> MINUTE.format(each.at().atZone(zone))),
                Column.<Behind>marked(
                        "outcome", TrendWords.get("column.outcome"), 150, each -> Mark.of(each.outcome())),
                Column.of("sample", TrendWords.get("column.sample"), 120, Behind::sample),
                Column.of("place", TrendWords.get("column.place"), 180, Behind::place));
        TableKit<Behind> kit = new TableKit<>(
                parent,
                context,
                new TableSpec<>(
                        "ledger.trend",
                        TrendWords.get("behind.name"),
                        columns,
                        RowSource.of(strips, columns),
                        java.util.Optional.empty(),
                        TrendWords.get("behind.none")));
        kit.onOpen(each -> context.show("ledger", each.result().toString()));
        return kit;
    }

    /** Says what is listed. */
    static String words(String of, List<Behind> strips) {
        long events = strips.stream().filter(Behind::event).count();
        String words = TrendWords.get("behind.words", of, strips.size(), events);
        return strips.size() < Trending.MOST_BEHIND
                ? words
                : words + " " + TrendWords.get("behind.most", strips.size());
    }
}
