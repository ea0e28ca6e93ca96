package wickbench.figures.trend;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;

/** Where a chart's centre comes from. */
public sealed interface Basis {

    /**
     * The points themselves, without those whose cause was found and removed.
     *
     * @param setAside the numbers of the points left out; they are drawn, but count for nothing
     */
    record Points(Set<Integer> setAside) implements Basis {
        public Points {
            setAside = Set.copyOf(setAside);
        }
    }

    /** An earlier period or a standard: the centre is known. */
    record Known(double centre) implements Basis {}

    /** Returns the usual basis, all points. */
    static Basis allPoints() {
        return new Points(Set.of());
    }

    /** Tells whether the point with this number counts. */
    default boolean counts(int number) {
        return !(this instanceof Points points && points.setAside().contains(number));
    }

    /** Returns the rows that count, in their order. */
    default <T> List<T> counted(List<T> rows) {
        if (this instanceof Points points) {
            points.setAside().forEach(number -> Inputs.whole("without", number, 1, rows.size()));
        }
        return IntStream.range(0, rows.size())
                .filter(i -> counts(i + 1))
                .mapToObj(rows::get)
                .toList();
    }
}
