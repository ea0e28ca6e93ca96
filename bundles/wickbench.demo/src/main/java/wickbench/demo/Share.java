package wickbench.demo;

import java.util.List;

/** Counts how many of some strips are of a kind. */
final class Share {
    private long of;
    private long all;

    void count(boolean hit) {
        all++;
        of += hit ? 1 : 0;
    }

    List<Told.Count> told(String hitName, String allName) {
        return List.of(new Told.Count(hitName, of), new Told.Count(allName, all));
    }
}
