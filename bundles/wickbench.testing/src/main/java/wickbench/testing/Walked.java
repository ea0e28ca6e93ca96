package wickbench.testing;

import java.util.List;

/**
 * What came of a walk through a window.
 *
 * @param views the pages, tabs and forms that were looked at
 * @param controls how many controls were met that take keys, each view counted for itself
 * @param misses a line for each law that a control breaks: the law, the control, the first view where it was met
 */
public record Walked(List<String> views, int controls, List<String> misses) {
    public Walked {
        views = List.copyOf(views);
        misses = List.copyOf(misses);
    }
}
