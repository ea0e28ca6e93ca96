package wickbench.tally;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.index.Index;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Column;
import wickbench.widgets.Fit;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Glyph;
import wickbench.widgets.Heading;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;

/** The page Tally: one table, the same rows that the command prints. */
@Component(property = {Page.ID + "=tally", Page.RANK + ":Integer=99"})
public final class TallyPage implements Page {
    private final Index index;

    @Activate
    public TallyPage(@Reference Index index) {
        this.index = index;
    }

    @Override
    public String title() {
        return TallyWords.get("page.title");
    }

    /** Four strokes, and one through them. */
    @Override
    public Glyph glyph() {
        return pen -> pen.line(5, 4, 5, 20)
                .line(10, 4, 10, 20)
                .line(15, 4, 15, 20)
                .line(20, 4, 20, 20)
                .line(2, 17, 23, 7);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        Composite page = context.theme().controls().box(parent, 1);
        new Heading(page, context.theme(), TallyWords.get("page.heading"), TallyWords.get("page.line"));
        TableKit<Tally> table = new TableKit<>(page, context, spec());
        Fit.grow(table.control());
        table.onLoaded(context::ready);
        return new PagePart() {
            @Override
            public void focus() {
                table.focus();
            }

            @Override
            public void newsCame() {
                table.reload();
            }
        };
    }

    private TableSpec<Tally> spec() {
        List<Column<Tally>> columns = List.of(
                Column.of("kind", TallyWords.get("column.kind"), 260, Tally::kind),
                Column.<Tally>of(
                                "entries", TallyWords.get("column.entries"), 120, each -> Long.toString(each.entries()))
                        .rightAligned());
        return new TableSpec<>(
                "tally",
                TallyWords.get("page.heading"),
                columns,
                new FreshRows<>(() -> Tally.all(index), columns), // read behind the screen
                Optional.empty(),
                TallyWords.get("empty"));
    }
}
