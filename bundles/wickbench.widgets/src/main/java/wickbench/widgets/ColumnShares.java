package wickbench.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Shares out the room of a table among its columns, from left to right.
 *
 * <p>Where there is room for all, each gets what it wants. Where that is too much, each gives of what it can spare. Where even that
 * does not help, only the first few are in sight, whole: what is left goes to what these want, and then to the last of them, so that
 * the next begins out of sight and not half in it.
 */
final class ColumnShares {
    private ColumnShares() {}

    /** @param room in pixels; 0 while the table has no size yet */
    static List<Integer> of(List<ColumnWish> columns, int room) {
        int wanted = sum(columns, ColumnWish::wanted);
        int least = sum(columns, ColumnWish::least);
        if (room <= 0 || wanted <= room) {
            return columns.stream().map(ColumnWish::wanted).toList();
        }
        return least <= room ? spared(columns, wanted - room, wanted - least) : inSight(columns, room);
    }

    private static List<Integer> spared(List<ColumnWish> columns, int over, int spare) {
        List<Integer> widths = new ArrayList<>();
        int given = 0;
        int soFar = 0;
        for (ColumnWish column : columns) {
            soFar += column.wanted() - column.least();
            int due = Math.toIntExact((long) soFar * over / spare);
            widths.add(column.wanted() - (due - given));
            given = due;
        }
        return widths;
    }

    private static List<Integer> inSight(List<ColumnWish> columns, int room) {
        int seen = 0;
        int used = 0;
        while (seen == 0 || seen < columns.size() && used + columns.get(seen).least() <= room) {
            used += columns.get(seen).least();
            seen++;
        }
        int left = Math.max(0, room - used);
        List<Integer> widths = new ArrayList<>();
        for (ColumnWish column : columns) {
            int more = widths.size() < seen ? Math.min(left, column.wanted() - column.least()) : 0;
            widths.add(column.least() + more);
            left -= more;
        }
        widths.set(seen - 1, widths.get(seen - 1) + left);
        return widths;
    }

    private static int sum(List<ColumnWish> columns, ToIntFunction<ColumnWish> part) {
        return columns.stream().mapToInt(part).sum();
    }
}
