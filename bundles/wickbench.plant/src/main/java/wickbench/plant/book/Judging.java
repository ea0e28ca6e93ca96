package wickbench.plant.book;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.Rows;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validating;
import wickbench.plant.clean.Validation.Lack;
import wickbench.plant.clean.Validation.Why;
import wickbench.plant.site.Sampling;

/**
 * Judges the cleans of a series by their readings as they stand.
 *
 * @param doubted Negatives that something put in doubt and on which nobody has decided
 */
record Judging(Rows rows, Set<UUID> doubted) implements Validating.SeriesJudge {

    @Override
    public List<Lack> lacks(Series series, SeriesRun run) {
        List<TestRows.Tested> read = run.readings().stream()
                .flatMap(id -> TestRows.of(rows, id).stream())
                .filter(each -> !each.started().isBefore(run.at()))
                .toList();
        return Validating.lacks(series, run, point -> against(read, point));
    }

    /** Several readings of a point: each must be Negative; an Invalid without a sign of allergen proves nothing. */
    private Optional<Why> against(List<TestRows.Tested> read, Sampling point) {
        List<TestRows.Tested> saying = read.stream()
                .filter(each -> each.what().equals(point) && each.says())
                .toList();
        if (saying.isEmpty()) {
            return Optional.of(Why.NOT_TESTED);
        }
        if (!saying.stream().allMatch(TestRows.Tested::negative)) {
            return Optional.of(Why.NOT_NEGATIVE);
        }
        boolean doubt = saying.stream().anyMatch(each -> doubted.contains(each.result()));
        return doubt ? Optional.of(Why.IN_DOUBT) : Optional.empty();
    }
}
