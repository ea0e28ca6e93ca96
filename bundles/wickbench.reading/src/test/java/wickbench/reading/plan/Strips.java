package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Strips for the tests, in seconds. */
final class Strips {
    private Strips() {}

    static PlanStrip strip(String name, int hands, int develop, int window, int look) {
        return new PlanStrip(name, seconds(hands), seconds(develop), seconds(window), seconds(look));
    }

    /** Returns {@code count} equal strips, numbered on from those in {@code before}. */
    static List<PlanStrip> and(List<PlanStrip> before, int count, int hands, int develop, int window, int look) {
        List<PlanStrip> strips = new ArrayList<>(before);
        for (int i = 0; i < count; i++) {
            strips.add(strip(Integer.toString(strips.size() + 1), hands, develop, window, look));
        }
        return strips;
    }

    static List<PlanStrip> equal(int count, int hands, int develop, int window, int look) {
        return and(List.of(), count, hands, develop, window, look);
    }

    static PlanRequest request(List<PlanStrip> strips, WindowRule rule) {
        return PlanRequest.of("test", strips, rule).orRefuse();
    }

    static Duration seconds(long seconds) {
        return Duration.ofSeconds(seconds);
    }
}
