package wickbench.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;
import wickbench.reading.plan.StartedStrip;
import wickbench.reading.plan.WindowRule;

/** Runs of 10 to 20 strips of two to four kits, drawn by chance from usual times; each rule of the window in turn. */
final class MixedRuns {
    private static final long SEED = 20261129;
    private static final int[] HANDS_ON = {20, 30, 30, 40, 45, 60};
    private static final int[] LOOK = {10, 15, 15, 20, 30};
    private static final int[] DEVELOP = {180, 300, 300, 420, 480, 600, 600, 900};
    private static final int[] WINDOW = {30, 60, 60, 60, 90, 120, 180, 300};

    private MixedRuns() {}

    /** Returns so many runs; {@code begun} ones have up to half of their strips started, and are planned anew. */
    static List<PlanRequest> drawn(int runs, boolean begun) {
        Random chance = new Random(SEED);
        return IntStream.range(0, runs)
                .mapToObj(run -> {
                    WindowRule rule = WindowRule.values()[run % WindowRule.values().length];
                    List<PlanStrip> strips = strips(chance);
                    return begun ? underWay(strips, rule, chance) : PlanRequest.of("bench", strips, rule).orRefuse();
                })
                .toList();
    }

    private static List<PlanStrip> strips(Random chance) {
        List<PlanStrip> kits = new ArrayList<>();
        boolean alike = chance.nextBoolean();
        Duration handsOn = one(HANDS_ON, chance);
        Duration look = one(LOOK, chance);
        int kinds = 2 + chance.nextInt(3);
        for (int kit = 0; kit < kinds; kit++) {
            Duration hands = alike ? handsOn : one(HANDS_ON, chance);
            kits.add(new PlanStrip(
                    "kit", hands, one(DEVELOP, chance), one(WINDOW, chance), alike ? look : one(LOOK, chance)));
        }
        int count = 10 + chance.nextInt(11);
        List<PlanStrip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            PlanStrip kit = kits.get(i < kinds ? i : chance.nextInt(kinds));
            strips.add(new PlanStrip("" + i, kit.handsOn(), kit.develop(), kit.window(), kit.look()));
        }
        return strips;
    }

    /** Starts some strips one after the other, the last of them up to five minutes ago. */
    private static PlanRequest underWay(List<PlanStrip> strips, WindowRule rule, Random chance) {
        List<PlanStrip> waiting = new ArrayList<>(strips);
        Collections.shuffle(waiting, chance);
        List<StartedStrip> running = new ArrayList<>();
        long started = -chance.nextInt(300);
        int begun = 1 + chance.nextInt(strips.size() / 2);
        for (int i = 0; i < begun; i++) {
            PlanStrip strip = waiting.remove(waiting.size() - 1);
            running.add(new StartedStrip(strip, Duration.ofSeconds(started)));
            started -= strip.handsOn().toSeconds() + chance.nextInt(20);
        }
        Duration freeFrom = Duration.ofSeconds(chance.nextInt(40));
        return PlanRequest.of("bench", new PlanRequest(running, waiting, rule, freeFrom))
                .orRefuse();
    }

    private static Duration one(int[] seconds, Random chance) {
        return Duration.ofSeconds(seconds[chance.nextInt(seconds.length)]);
    }
}
