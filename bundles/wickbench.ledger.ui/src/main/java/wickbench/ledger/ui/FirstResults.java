package wickbench.ledger.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.ledger.Filter;
import wickbench.ledger.Results;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;

/** The first strips; a desk without a bench reads none. */
@Component
public final class FirstResults implements FirstSteps {
    private final Home home;
    private final Results results;

    @Activate
    public FirstResults(@Reference Home home, @Reference Results results) {
        this.home = home;
        this.results = results;
    }

    @Override
    public List<FirstStep> steps() {
        return List.of(new FirstStep(
                80,
                LedgerUiWords.get("step.strips"),
                LedgerUiWords.get("step.strips.text"),
                home.isBegun() && results.count(Filter.ALL) > 0,
                "bench",
                ""));
    }
}
