package wickbench.ledger.ui.trend;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.ledger.trend.Trending.Rank;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.MeaningBar;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Points, lines, targets or methods with their share as a bar, the highest first; the longest bar is the highest share. */
record RankBars(Theme theme) {
    private static final int MOST = 12;
    private static final int HEIGHT = 14;

    void into(Composite card, List<Rank> ranks) {
        Composite rows = Fit.wide(theme.controls().box(card, 3));
        double highest = ranks.stream().mapToDouble(Rank::share).max().orElse(0);
        ranks.stream().limit(MOST).forEach(rank -> row(rows, rank, highest));
        if (ranks.size() > MOST) {
            theme.controls().text(card, Type.SMALL, TrendWords.get("rank.more", ranks.size() - MOST));
        }
    }

    private void row(Composite rows, Rank rank, double highest) {
        String words =
                TrendWords.get("rank.share", rank.events(), rank.strips(), Math.round(1000 * rank.share()) / 10.0);
        theme.controls().label(rows, Type.BODY, rank.name().replace("&", "&&"));
        Canvas bar = new Canvas(rows, SWT.DOUBLE_BUFFERED);
        bar.setBackground(rows.getBackground());
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.heightHint = theme.px(HEIGHT);
        bar.setLayoutData(data);
        bar.addListener(
                SWT.Paint, event -> paint(event.gc, bar.getClientArea(), highest == 0 ? 0 : rank.share() / highest));
        bar.addListener(SWT.Resize, event -> bar.redraw());
        Names.give(bar, () -> rank.name() + ": " + words);
        theme.controls().label(rows, Type.BODY, words);
    }

    private void paint(GC gc, Rectangle area, double part) {
        gc.setBackground(theme.color(theme.palette().stripe()));
        gc.fillRectangle(area);
        int filled = (int) Math.round(area.width * part);
        MeaningBar.paint(gc, theme, Meaning.ALARM, new Rectangle(0, 0, filled, area.height));
    }
}
