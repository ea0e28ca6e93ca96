package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Runs a contest: some rounds to warm up that do not count, then all in turn, and compares medians. */
final class Stadium {
    private final Consumer<String> told;

    Stadium(Consumer<String> told) {
        this.told = told;
    }

    List<Line> run(Contest contest, Path folder) throws Exception {
        told.accept(contest.figure());
        Contest.Field field = contest.field(folder);
        List<Contestant> all = new ArrayList<>(List.of(field.ours()));
        field.baselines().forEach(each -> all.add(each.contestant()));
        try {
            return lines(contest, field, medians(all, contest));
        } finally {
            for (Contestant each : all) {
                each.close();
            }
        }
    }

    private double[] medians(List<Contestant> all, Contest contest) throws Exception {
        double[][] laps = new double[all.size()][contest.rounds()];
        for (int round = -contest.warmUps(); round < contest.rounds(); round++) {
            for (int who = 0; who < all.size(); who++) {
                double lap = all.get(who).lap();
                if (round >= 0) {
                    laps[who][round] = lap;
                }
            }
        }
        double[] medians = new double[all.size()];
        for (int who = 0; who < all.size(); who++) {
            medians[who] = Median.of(laps[who]);
            told.accept("  " + all.get(who).name() + ": " + contest.unit().text(medians[who]));
        }
        return medians;
    }

    private static List<Line> lines(Contest contest, Contest.Field field, double[] medians) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < field.baselines().size(); i++) {
            Baseline against = field.baselines().get(i);
            lines.add(new Line(
                    contest.figure(),
                    contest.unit(),
                    medians[0],
                    against.contestant().name(),
                    medians[i + 1],
                    against.goal()));
        }
        return lines;
    }
}
