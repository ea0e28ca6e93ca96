package wickbench.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wickbench.figures.detection.Link;

/** All figures that are measured; a new one is a line here. */
final class Contests {
    private Contests() {}

    /** Returns them in the order of the table; the long ones take their full size, and kill programs no longer than told. */
    static List<Contest> all(boolean full, Duration patience) {
        List<Contest> all = new ArrayList<>(List.of(
                new DurableEntry(),
                new VerifyJournal(full ? 1_000_000 : 200_000, 50_000),
                new VerifyJournal(full ? 1_000_000 : 200_000, 1_000),
                new ProveJournal(full ? 1_000_000 : 200_000),
                new RebuildIndex(full ? 200_000 : 20_000),
                new SeenElsewhere(),
                new LedgerPage(full ? 1_000_000 : 50_000),
                new StartUp(),
                new EditionSize("stockroom"),
                new EditionSize("training-room"),
                new EditionSize("quality-desk"),
                new OpenJournal(full ? 10_000_000 : 1_000_000),
                new Kills(full ? 10_000 : 50, patience),
                PrintReport.pdf(1_000, false),
                PrintReport.pdf(1_000, true),
                PrintReport.xlsx(100_000),
                PrintReport.csv(100_000),
                new Redraw(1_000_000),
                new PlanTotal(),
                PlanTime.proof(),
                PlanTime.again(),
                MixedProven.shortest(full ? 300 : 60),
                MixedProven.anew(full ? 300 : 60),
                MixedProven.allAims(full ? 300 : 60),
                new MixedTime(full ? 300 : 60),
                new AlarmLateness(full ? 60 : 480),
                new PlansChecked(full ? 100_000 : 5_000),
                new ExactLimits(),
                new DetectionFits(Link.PROBIT),
                new DetectionFits(Link.CLOGLOG)));
        all.addAll(LedgerSearch.over(new FilledLedger(full ? 1_000_000 : 100_000)));
        return all;
    }
}
