package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which running strips can be read in time: as many as possible, when nothing new is started.
 *
 * <p>For each number of saved strips it keeps the soonest end of their looks, taking strips by the end of their windows. That
 * is the most that can be saved wherever the strip that develops sooner must be read sooner; with windows that lie inside
 * other windows it may save one less than possible.
 */
final class Saving {
    private static final long NEVER = Long.MAX_VALUE;

    private final PlanRequest request;
    private final List<StartedStrip> byDeadline;
    private final long[][] end;

    Saving(PlanRequest request) {
        this.request = request;
        byDeadline = request.running().stream()
                .sorted(Comparator.comparing(this::latest))
                .toList();
        end = new long[byDeadline.size() + 1][byDeadline.size() + 1];
    }

    /** Returns the strips to keep, in the order of the request. */
    List<StartedStrip> kept() {
        Arrays.fill(end[0], NEVER);
        end[0][0] = request.freeFrom().toMillis();
        for (int i = 0; i < byDeadline.size(); i++) {
            for (int saved = 0; saved <= byDeadline.size(); saved++) {
                end[i + 1][saved] = Math.min(end[i][saved], saved == 0 ? NEVER : with(i, end[i][saved - 1]));
            }
        }
        return traced();
    }

    private List<StartedStrip> traced() {
        int saved = byDeadline.size();
        while (end[byDeadline.size()][saved] == NEVER) {
            saved--;
        }
        List<StartedStrip> kept = new ArrayList<>();
        for (int i = byDeadline.size(); i > 0; i--) {
            if (end[i][saved] != end[i - 1][saved]) {
                kept.add(byDeadline.get(i - 1));
                saved--;
            }
        }
        return request.running().stream().filter(kept::contains).toList();
    }

    /** Returns when the look of a strip ends that follows work until {@code free}, or never when it is too late. */
    private long with(int index, long free) {
        StartedStrip strip = byDeadline.get(index);
        long begin = Math.max(free, opens(strip));
        return free == NEVER || begin > latest(strip)
                ? NEVER
                : begin + strip.strip().look().toMillis();
    }

    private static long opens(StartedStrip strip) {
        return strip.startedAt().plus(strip.strip().develop()).toMillis();
    }

    private long latest(StartedStrip strip) {
        return opens(strip) + request.rule().slack(strip.strip()).toMillis();
    }
}
