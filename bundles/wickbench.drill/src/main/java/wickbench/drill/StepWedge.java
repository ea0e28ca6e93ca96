package wickbench.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import wickbench.api.words.Coded;

/**
 * Steps of grey, on some of which lies a spot; who counts the spots of each row rightly has a screen, and light in the room, that hide
 * little.
 *
 * <p>Common practice for screens, no published source; the steps and how much darker a spot is are ours.
 */
public record StepWedge(List<Row> rows) {
    /** Steps in each row. */
    public static final int STEPS = 8;

    private static final int FEWEST = 3;
    private static final int MOST = 6;

    /** Which end of the greys. */
    public enum End implements Coded {
        /** Where strips lie. */
        LIGHT(0.40, 0.95, 0.04),
        MIDDLE(0.05, 0.35, 0.08),
        /** Lost first in a dazzling room. */
        DARK(0.005, 0.04, 0.40);

        private final double from;
        private final double to;
        private final double contrast;

        End(double from, double to, double contrast) {
            this.from = from;
            this.to = to;
            this.contrast = contrast;
        }
    }

    /** A row of steps, the darkest first. */
    public record Row(End end, List<Step> steps) {
        public Row {
            steps = List.copyOf(steps);
        }

        public int spots() {
            return (int) steps.stream().filter(Step::spot).count();
        }
    }

    /**
     * A step.
     *
     * @param grey its code, 0 to 255
     * @param spotGrey the code of the spot, darker than the step; there is none where both are the same
     */
    public record Step(int grey, int spotGrey) {
        public boolean spot() {
            return spotGrey < grey;
        }
    }

    public StepWedge {
        rows = List.copyOf(rows);
    }

    /** Makes a wedge; which steps have a spot follows from the seed. */
    public static StepWedge of(long seed) {
        Random chance = new Random(seed);
        List<Row> rows = new ArrayList<>();
        for (End end : End.values()) {
            rows.add(new Row(end, steps(end, chance)));
        }
        return new StepWedge(rows);
    }

    /** Returns the ends whose spots were not counted rightly, in the order of the rows. */
    public List<End> wrong(List<Integer> counted) {
        List<End> wrong = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (i >= counted.size() || counted.get(i) != rows.get(i).spots()) {
                wrong.add(rows.get(i).end());
            }
        }
        return wrong;
    }

    private static List<Step> steps(End end, Random chance) {
        int left = FEWEST + chance.nextInt(MOST - FEWEST + 1);
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            // so many of the steps that remain, each as likely as the next
            boolean spot = chance.nextInt(STEPS - i) < left;
            left -= spot ? 1 : 0;
            double light = end.from * Math.pow(end.to / end.from, i / (STEPS - 1.0));
            int grey = Srgb.below(light);
            steps.add(new Step(grey, spot ? Srgb.below(Srgb.light(grey) * (1 - end.contrast)) : grey));
        }
        return steps;
    }
}
