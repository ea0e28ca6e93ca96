package wickbench.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;
import wickbench.reading.plan.StartedStrip;
import wickbench.reading.plan.WindowRule;

/** Runs to be planned: 20 strips of common times, and runs drawn by chance. */
final class PlanCases {
    static final int STRIPS = 20;
    static final Duration HANDS_ON = Duration.ofSeconds(30);
    static final Duration LOOK = Duration.ofSeconds(15);
    static final Duration DEVELOP = Duration.ofSeconds(300);
    static final Duration WINDOW = Duration.ofSeconds(60);

    private static final int LONGEST_RUN = 20;

    private PlanCases() {}

    /** Twenty equal strips, read from 300 to 360 s after their start. */
    static PlanRequest twenty() {
        return PlanRequest.of("bench", strips(STRIPS, 1), WindowRule.END).orRefuse();
    }

    /** The same run a little later: five strips run, one of them nearly too late, and hands are busy for 10 s. */
    static PlanRequest underWay() {
        List<PlanStrip> all = strips(STRIPS, 1);
        List<StartedStrip> running = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            running.add(new StartedStrip(all.get(i), Duration.ofSeconds(30L * i - 340)));
        }
        return PlanRequest.of(
                        "bench",
                        new PlanRequest(running, all.subList(5, STRIPS), WindowRule.END, Duration.ofSeconds(10)))
                .orRefuse();
    }

    /** A run of up to 20 strips of up to three kits, some of which may run already. */
    static PlanRequest drawn(Random chance) {
        List<PlanStrip> kits = new ArrayList<>();
        for (int kit = 0; kit <= chance.nextInt(3); kit++) {
            int look = 5 + chance.nextInt(26);
            kits.add(strip("kit", 10 + chance.nextInt(51), 60 + chance.nextInt(841), look + chance.nextInt(121), look));
        }
        List<PlanStrip> waiting = new ArrayList<>();
        List<StartedStrip> running = new ArrayList<>();
        int count = 1 + chance.nextInt(LONGEST_RUN);
        boolean begun = chance.nextBoolean();
        for (int i = 1; i <= count; i++) {
            PlanStrip kit = kits.get(chance.nextInt(kits.size()));
            PlanStrip strip = new PlanStrip("" + i, kit.handsOn(), kit.develop(), kit.window(), kit.look());
            if (begun && i <= count / 2) {
                running.add(new StartedStrip(strip, Duration.ofSeconds(-chance.nextInt(1000))));
            } else {
                waiting.add(strip);
            }
        }
        WindowRule rule = WindowRule.values()[chance.nextInt(WindowRule.values().length)];
        return PlanRequest.of(
                        "bench",
                        new PlanRequest(running, waiting, rule, Duration.ofSeconds(begun ? chance.nextInt(60) : 0)))
                .orRefuse();
    }

    private static List<PlanStrip> strips(int count, int first) {
        List<PlanStrip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            strips.add(new PlanStrip("" + (first + i), HANDS_ON, DEVELOP, WINDOW, LOOK));
        }
        return strips;
    }

    private static PlanStrip strip(String name, int hands, int develop, int window, int look) {
        return new PlanStrip(
                name,
                Duration.ofSeconds(hands),
                Duration.ofSeconds(develop),
                Duration.ofSeconds(window),
                Duration.ofSeconds(look));
    }
}
