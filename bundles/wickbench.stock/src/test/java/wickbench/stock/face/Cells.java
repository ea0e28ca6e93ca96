package wickbench.stock.face;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** Cuts a drawn page where black squares stand, as a person holds a scanner over one label after another. */
final class Cells {
    private static final int AROUND = 12;
    private static final int LEAST = 40;
    private static final int WHITE_BETWEEN = 8;

    private Cells() {}

    static List<BufferedImage> of(BufferedImage page) {
        List<BufferedImage> cells = new ArrayList<>();
        boolean[][] seen = new boolean[page.getHeight()][page.getWidth()];
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (!seen[y][x] && black(page, x, y)) {
                    int[] box = grown(page, x, y, seen);
                    if (box[2] - box[0] >= LEAST && box[3] - box[1] >= LEAST) {
                        cells.add(cut(page, box));
                    }
                }
            }
        }
        return cells;
    }

    private static boolean black(BufferedImage page, int x, int y) {
        return (page.getRGB(x, y) & 0xFF) < 64 && (page.getRGB(x, y) >> 8 & 0xFF) < 16;
    }

    /** Takes everything black that lies near, so that the loose modules of a code belong to it. */
    private static int[] grown(BufferedImage page, int x, int y, boolean[][] seen) {
        int[] box = {x, y, x, y};
        java.util.ArrayDeque<int[]> open = new java.util.ArrayDeque<>(List.of(new int[] {x, y}));
        seen[y][x] = true;
        while (!open.isEmpty()) {
            int[] at = open.remove();
            box[0] = Math.min(box[0], at[0]);
            box[1] = Math.min(box[1], at[1]);
            box[2] = Math.max(box[2], at[0]);
            box[3] = Math.max(box[3], at[1]);
            for (int dy = -WHITE_BETWEEN; dy <= WHITE_BETWEEN; dy++) {
                for (int dx = -WHITE_BETWEEN; dx <= WHITE_BETWEEN; dx++) {
                    int nx = at[0] + dx;
                    int ny = at[1] + dy;
                    boolean inside = nx >= 0 && ny >= 0 && nx < page.getWidth() && ny < page.getHeight();
                    if (inside && !seen[ny][nx] && black(page, nx, ny)) {
                        seen[ny][nx] = true;
                        open.add(new int[] {nx, ny});
                    }
                }
            }
        }
        return box;
    }

    private static BufferedImage cut(BufferedImage page, int[] box) {
        int left = Math.max(0, box[0] - AROUND);
        int top = Math.max(0, box[1] - AROUND);
        int right = Math.min(page.getWidth(), box[2] + AROUND);
        int bottom = Math.min(page.getHeight(), box[3] + AROUND);
        return page.getSubimage(left, top, right - left, bottom - top);
    }
}
