package wickbench.training;

import java.util.EnumMap;
import java.util.Map;

/** How many strips of which kind a round has, and by which rule it is passed; stated before anybody calls. */
public record Design(Map<StripClass, Integer> strips, PassRule rule) {
    /** More than anybody can read in one go. */
    public static final int MOST = 200;

    public Design {
        Map<StripClass, Integer> all = new EnumMap<>(StripClass.class);
        for (StripClass kind : StripClass.values()) {
            int count = strips.getOrDefault(kind, 0);
            if (count < 0 || count > MOST) {
                throw new IllegalArgumentException(
                        "expected 0 to " + MOST + " " + kind.code() + " strips, found " + count);
            }
            all.put(kind, count);
        }
        strips = Map.copyOf(all);
    }

    public int of(StripClass kind) {
        return strips.get(kind);
    }

    public int total() {
        return strips.values().stream().mapToInt(Integer::intValue).sum();
    }
}
