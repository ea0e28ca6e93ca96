package wickbench.figures.ui;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.chart.ChartPainter;
import wickbench.figures.sums.KeptSums;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page of sums behind decisions. */
@Component(property = {Page.ID + "=figures", Page.RANK + ":Integer=60"})
public final class FiguresPage implements Page {
    private final List<ChartPainter> painters;
    private final KeptSums kept;

    @Activate
    public FiguresPage(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ChartPainter> painters,
            @Reference KeptSums kept) {
        this.painters = painters;
        this.kept = kept;
    }

    @Override
    public String title() {
        return FiguresUiWords.get("figures.title");
    }

    /** A bell over its axis. */
    @Override
    public String guide() {
        return "figures.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.line(3, 20, 21, 20).line(3, 18, 7, 16, 10, 6, 12, 4, 14, 6, 17, 16, 21, 18);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new FiguresPart(parent, context, new Doors(painters.stream().findFirst(), kept));
    }
}
