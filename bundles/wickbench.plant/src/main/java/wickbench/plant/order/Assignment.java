package wickbench.plant.order;

import java.util.Arrays;

/**
 * A bound from below: the cheapest way to give each product one that follows it, without asking that they make one order.
 *
 * <p>The assignment problem by shortest augmenting paths: Kuhn, Naval Res. Logist. Q. 2 (1955) 83; Jonker and Volgenant, Computing 38
 * (1987) 325. Takes n³ steps.
 */
final class Assignment {
    private Assignment() {}

    /** Returns thousandths of a minute below which no order is; {@link ChangeTable#NEVER} or more when there is none at all. */
    static long bound(Rules rules) {
        ChangeTable table = rules.table();
        // an open order is a round through a place of no cost, after the last and before the first
        int n = table.size() + (rules.round() ? 0 : 1);
        long[][] cost = new long[n][n];
        for (int from = 0; from < n; from++) {
            for (int to = 0; to < n; to++) {
                boolean outside = from >= table.size() || to >= table.size();
                boolean itself = from == to;
                cost[from][to] = itself ? ChangeTable.NEVER / n : outside ? 0 : cheap(table.cost(from, to), n);
            }
        }
        return n == 1 ? 0 : least(cost);
    }

    private static long cheap(long cost, int n) {
        return Math.min(cost, ChangeTable.NEVER / n);
    }

    private static long least(long[][] cost) {
        int n = cost.length;
        long[] rowPrice = new long[n + 1];
        long[] columnPrice = new long[n + 1];
        int[] rowOf = new int[n + 1];
        int[] before = new int[n + 1];
        for (int row = 1; row <= n; row++) {
            rowOf[0] = row;
            int column = 0;
            long[] reach = new long[n + 1];
            boolean[] used = new boolean[n + 1];
            Arrays.fill(reach, Long.MAX_VALUE);
            do {
                used[column] = true;
                int from = rowOf[column];
                long step = Long.MAX_VALUE;
                int next = 0;
                for (int to = 1; to <= n; to++) {
                    if (!used[to]) {
                        long way = cost[from - 1][to - 1] - rowPrice[from] - columnPrice[to];
                        if (way < reach[to]) {
                            reach[to] = way;
                            before[to] = column;
                        }
                        if (reach[to] < step) {
                            step = reach[to];
                            next = to;
                        }
                    }
                }
                for (int to = 0; to <= n; to++) {
                    if (used[to]) {
                        rowPrice[rowOf[to]] += step;
                        columnPrice[to] -= step;
                    } else {
                        reach[to] -= step;
                    }
                }
                column = next;
            } while (rowOf[column] != 0);
            while (column != 0) {
                rowOf[column] = rowOf[before[column]];
                column = before[column];
            }
        }
        return -columnPrice[0];
    }
}
