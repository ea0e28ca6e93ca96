package wickbench.plant.clean;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wickbench.api.reading.Visual;
import wickbench.plant.clean.Validation.Lack;
import wickbench.plant.clean.Validation.Ran;
import wickbench.plant.clean.Validation.Why;
import wickbench.plant.clean.Validity.Move;
import wickbench.plant.site.Sampling;

/** Folds what was told of one clean, in order, into how it stands. What cannot be moved does not move. */
public final class Validating {
    private Validity state = Validity.NEVER;
    private int passes;
    private Optional<Series> series = Optional.empty();
    private Optional<LocalDate> until = Optional.empty();
    private Set<String> shown = Set.of();
    private final List<Ran> runs = new ArrayList<>();
    private Optional<String> why = Optional.empty();

    private Validating() {}

    /** Something told of a clean, and the local day on which it was. */
    public record Told(LocalDate day, Object what) {}

    /**
     * What the readings of a clean say of the points of a series.
     *
     * @param against tells of a reading's place and method why it is no pass; empty where it stands as a valid Negative
     */
    public static List<Lack> lacks(Series series, SeriesRun run, Function<Sampling, Optional<Why>> against) {
        if (run.visual() == Visual.SOILED) {
            return List.of(new Lack(Why.SOILED, ""));
        }
        return series.points().stream()
                .flatMap(point -> against.apply(point).map(why -> new Lack(why, point.place())).stream())
                .toList();
    }

    /**
     * Folds.
     *
     * @param told in the order in which it was: {@link Clean}, {@link Series}, {@link SeriesRun}, {@link Confirmed},
     *     {@link Changed}
     * @param today as of which day
     */
    public static Validation fold(Clean clean, List<Told> told, LocalDate today, SeriesJudge judge) {
        Validating folding = new Validating();
        int edition = 0;
        for (Told each : told) {
            folding.pass(each.day());
            if (each.what() instanceof Clean stated) {
                if (edition != 0 && stated.edition() != edition) {
                    folding.changed(Integer.toString(stated.edition()));
                }
                edition = stated.edition();
            } else {
                folding.take(each.what(), judge);
            }
        }
        folding.pass(today);
        return folding.result(clean);
    }

    /** Judges a clean of a series. */
    @FunctionalInterface
    public interface SeriesJudge {
        List<Lack> lacks(Series series, SeriesRun run);
    }

    private void take(Object what, SeriesJudge judge) {
        if (what instanceof Series opened) {
            open(opened);
        } else if (what instanceof SeriesRun run) {
            series.ifPresent(under -> ran(run, judge.lacks(under, run)));
        } else if (what instanceof Confirmed confirmed) {
            confirm(confirmed);
        } else if (what instanceof Changed changed) {
            changed(changed.reason());
        }
    }

    private void open(Series opened) {
        move(Move.OPEN, () -> {
            series = Optional.of(opened);
            passes = 0;
            runs.clear();
        });
    }

    private void ran(SeriesRun run, List<Lack> lacks) {
        move(lacks.isEmpty() ? Move.PASS : Move.FAIL, () -> {
            passes = lacks.isEmpty() ? passes + 1 : 0;
            runs.add(new Ran(run, lacks));
        });
    }

    private void confirm(Confirmed confirmed) {
        if (passes >= Series.PASSES) {
            move(Move.CONFIRM, () -> {
                until = Optional.of(confirmed.until());
                shown = series.map(Series::allergens).orElse(Set.of());
                passes = 0;
                why = Optional.empty();
            });
        }
    }

    private void changed(String reason) {
        move(Move.CHANGE, () -> {
            passes = 0;
            runs.clear();
            why = Optional.of(reason);
        });
    }

    private void pass(LocalDate now) {
        if (until.filter(last -> last.isBefore(now)).isPresent()) {
            move(Move.EXPIRE, () -> {});
        }
    }

    private void move(Move move, Runnable then) {
        state.after(move).ifPresent(next -> {
            state = next;
            then.run();
        });
    }

    private Validation result(Clean clean) {
        return new Validation(clean, state, passes, series, until, shown, runs, why);
    }
}
