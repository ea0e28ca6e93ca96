package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import wickbench.bench.run.RunStrip;

/** The strips of a run that has not begun, as they stand in the list beside the form. */
final class NewStrips {
    private final StripList list;
    private final BooleanSupplier drawn;
    private final List<RunStrip> strips = new ArrayList<>();

    /** @param drawn tells of each strip that nobody typed whether a second person is to read it */
    NewStrips(StripList list, BooleanSupplier drawn) {
        this.list = list;
        this.drawn = drawn;
    }

    List<RunStrip> all() {
        return List.copyOf(strips);
    }

    boolean isEmpty() {
        return strips.isEmpty();
    }

    int next() {
        return strips.size() + 1;
    }

    void put(List<RunStrip> instead) {
        strips.clear();
        strips.addAll(instead);
        list.show(strips);
    }

    void add(RunStrip strip) {
        strips.add(strip);
        list.show(strips);
    }

    void removeLast() {
        strips.remove(strips.size() - 1);
        list.show(strips);
    }

    /** Adds what nobody typed; a sample that waits in the list already is not put there twice. */
    void keep(List<RunStrip> made) {
        made.stream().filter(strip -> !waits(strip)).forEach(strip -> strips.add(numbered(strip)));
        list.show(strips);
    }

    private boolean waits(RunStrip strip) {
        return strips.stream()
                .anyMatch(other -> other.unread().sample().equals(strip.unread().sample())
                        && other.unread().method().equals(strip.unread().method())
                        && other.unread().lot().equals(strip.unread().lot()));
    }

    private RunStrip numbered(RunStrip strip) {
        return new RunStrip(
                next(), strip.unread(), strip.develop(), strip.window(), strip.clean(), drawn.getAsBoolean());
    }
}
