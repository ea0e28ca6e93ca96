package wickbench.bench.plan;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import wickbench.reading.plan.PlannedStrip;
import wickbench.reading.plan.RunPlan;

/** A plan as bars of characters, a strip a line. */
final class Bars {
    private static final int WIDTH = 72;
    private static final char HANDS = '#';
    private static final char DEVELOPING = '-';
    private static final char WINDOW = '=';
    private static final char LOOK = 'R';

    private final long total;
    private final char[] cells = new char[WIDTH];

    private Bars(Duration total) {
        this.total = Math.max(1, total.toMillis());
        Arrays.fill(cells, ' ');
    }

    static List<String> of(RunPlan plan) {
        int width = plan.strips().stream()
                .mapToInt(strip -> strip.strip().name().length())
                .max()
                .orElse(0);
        return plan.strips().stream()
                .map(strip -> " ".repeat(width - strip.strip().name().length())
                        + strip.strip().name() + " |" + bar(plan.total(), strip) + "|")
                .toList();
    }

    private static String bar(Duration total, PlannedStrip strip) {
        Bars bars = new Bars(total);
        bars.fill(DEVELOPING, strip.started(), strip.opens());
        bars.fill(WINDOW, strip.opens(), strip.closes());
        bars.fill(HANDS, strip.dipStart(), strip.started());
        bars.fill(LOOK, strip.readStart(), strip.readEnd());
        return new String(bars.cells);
    }

    private void fill(char with, Duration from, Duration to) {
        int first = cell(from);
        int last = Math.max(first + 1, cell(to));
        Arrays.fill(cells, Math.min(first, WIDTH - 1), Math.min(last, WIDTH), with);
    }

    private int cell(Duration at) {
        return (int) Math.min(WIDTH, Math.max(0, at.toMillis()) * WIDTH / total);
    }
}
