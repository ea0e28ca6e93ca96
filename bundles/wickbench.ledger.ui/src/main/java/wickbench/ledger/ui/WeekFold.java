package wickbench.ledger.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import wickbench.api.json.Json;
import wickbench.ledger.Filter;
import wickbench.ledger.Week;
import wickbench.shell.PageContext;
import wickbench.widgets.ChartView;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;

/** The weeks of the results that pass the filter, as a chart that can be folded away. */
final class WeekFold {
    private static final String KEY = "ledger.weeks";
    private static final int HEIGHT = 168;

    private final PageContext context;
    private final Ledger ledger;
    private final Supplier<Filter> filter;
    private final Button toggle;
    private final Label words;
    private final ChartView view;
    private boolean folded;
    private Optional<Job> counting = Optional.empty();

    /** @param row where the button stands that shows and hides them */
    WeekFold(Composite parent, Composite row, PageContext context, Ledger ledger, Supplier<Filter> filter) {
        this.context = context;
        this.ledger = ledger;
        this.filter = filter;
        Composite box = Fit.wide(context.theme().controls().box(parent, 1));
        toggle = context.theme().controls().button(row, LedgerUiWords.get("weeks.hide"), this::turn);
        words = context.theme().controls().quiet(box, "");
        view = new ChartView(box, context, ledger.painters().stream().findFirst());
        folded = context.memory().recall(KEY).isEmpty();
        lay();
        reload();
    }

    private void turn() {
        folded = !folded;
        if (folded) {
            context.memory().forget(KEY);
        } else {
            context.memory().keep(KEY, new Json.Obj(Map.of()));
        }
        lay();
        reload();
        view.requestLayout();
    }

    private void lay() {
        toggle.setText(LedgerUiWords.get(folded ? "weeks.show" : "weeks.hide"));
        lay(words, SWT.DEFAULT);
        lay(view, context.theme().px(HEIGHT));
        toggle.requestLayout();
    }

    private void lay(Control control, int height) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.heightHint = height;
        data.exclude = folded;
        control.setLayoutData(data);
        control.setVisible(!folded);
    }

    /** Counts again, unless nobody would see it. */
    void reload() {
        counting.ifPresent(Job::cancel);
        if (!folded) {
            Filter asked = filter.get();
            counting = Optional.of(context.jobs()
                    .run(
                            LedgerUiWords.get("weeks.counting"),
                            progress -> ledger.results().weekly(asked),
                            this::show));
        }
    }

    private void show(List<Week> weeks) {
        words.setText(WeekChart.words(weeks));
        view.chart(WeekChart.of(weeks));
    }

    void fold(boolean away) {
        if (away != folded) {
            turn();
        }
    }

    ChartView view() {
        return view;
    }

    String words() {
        return words.getText();
    }
}
