package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import wickbench.api.words.Coded;

/** The charts there are, by the names the handbooks give them. */
enum TrendKind implements Coded {
    P,
    P_PRIME,
    C,
    CUSUM,
    EWMA,
    G,
    T;

    static List<String> codes() {
        return Arrays.stream(values()).map(TrendKind::code).toList();
    }
}
