package wickbench.plant.ui;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.widgets.Composite;
import wickbench.plant.site.Sampling;

/** The points of a line, each by each method by which it may be sampled. */
final class Samplings {
    private Samplings() {}

    static Ticks<Sampling> ticks(Composite parent, Stand stand, String line, List<Sampling> chosen) {
        List<Sampling> all = new ArrayList<>(stand.plant().pointsOf(line).stream()
                .flatMap(point -> point.methods().stream().map(method -> new Sampling(point.name(), method)))
                .toList());
        // one that was chosen before stays, although the point is sampled otherwise now
        chosen.stream().filter(each -> !all.contains(each)).forEach(all::add);
        return new Ticks<>(parent, stand.context().theme(), all, Samplings::words, chosen);
    }

    static String words(Sampling what) {
        return PlantUiWords.get("due.to-sample", what.place(), what.method());
    }
}
