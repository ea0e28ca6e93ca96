package wickbench.ledger.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.ledger.acts.Reviewing;
import wickbench.ledger.acts.Reviewing.Waiting;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** Reviews that are late. */
@Component
public final class ReviewDue implements DueSource {
    private final Home home;
    private final Reviewing reviewing;

    @Activate
    public ReviewDue(@Reference Home home, @Reference Reviewing reviewing) {
        this.home = home;
        this.reviewing = reviewing;
    }

    @Override
    public List<Due> due() {
        if (!home.isBegun()) {
            return List.of();
        }
        Waiting waiting = reviewing.waiting();
        return waiting.late() == 0
                ? List.of()
                : List.of(new Due(
                        new Mark(LedgerUiWords.get("due.review", waiting.late()), Shape.TRIANGLE, Meaning.CAUTION),
                        "ledger",
                        LedgerPart.UNREVIEWED));
    }
}
