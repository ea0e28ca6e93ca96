package wickbench.figures.sums;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that a sum asks.
 *
 * @param name as the sum names it when it complains; an option is called by it
 * @param kind what is asked
 * @param argument what the command line calls it when it is given by its place; empty for an option
 * @param usual what holds when nothing is given
 * @param needed it must be given
 * @param example what a page shows at first; of a table its rows, with a header
 * @param only asked only with these choices of another input
 */
public record Input(
        String name,
        Kind kind,
        Optional<String> argument,
        Optional<String> usual,
        boolean needed,
        String example,
        Optional<Only> only) {

    /** What is asked. */
    public sealed interface Kind {
        /** A number. */
        record Number() implements Kind {}

        /** A whole number. */
        record Whole() implements Kind {}

        /** A decimal, kept as it is written. */
        record Decimal() implements Kind {}

        /** Several numbers. */
        record Numbers() implements Kind {}

        /** Words. */
        record Words() implements Kind {}

        /** Yes or no. */
        record Flag() implements Kind {}

        /** One of a few codes. */
        record Choice(List<String> codes) implements Kind {
            public Choice {
                codes = List.copyOf(codes);
            }
        }

        /** Rows of cells; without columns, as many as there are. */
        record Rows(List<String> columns) implements Kind {
            public Rows {
                columns = List.copyOf(columns);
            }
        }
    }

    /**
     * A condition.
     *
     * @param input a choice
     * @param codes the choices that ask for more
     */
    public record Only(String input, Set<String> codes) {
        public Only {
            codes = Set.copyOf(codes);
        }
    }

    static Input number(String name) {
        return of(name, new Kind.Number());
    }

    static Input whole(String name) {
        return of(name, new Kind.Whole());
    }

    static Input decimal(String name) {
        return of(name, new Kind.Decimal());
    }

    static Input numbers(String name) {
        return of(name, new Kind.Numbers());
    }

    static Input words(String name) {
        return of(name, new Kind.Words());
    }

    static Input flag(String name) {
        return of(name, new Kind.Flag()).usual("no");
    }

    static Input choice(String name, List<String> codes) {
        return of(name, new Kind.Choice(codes));
    }

    /** A table that the command line takes by its place. */
    static Input table(String name, String... columns) {
        return of(name, new Kind.Rows(List.of(columns))).at("FILE");
    }

    /** The confidence of limits. */
    static Input level() {
        return number("level").usual("0.95");
    }

    private static Input of(String name, Kind kind) {
        return new Input(name, kind, Optional.empty(), Optional.empty(), true, "", Optional.empty());
    }

    Input at(String place) {
        return new Input(name, kind, Optional.of(place), usual, needed, example, only);
    }

    Input usual(String text) {
        return new Input(name, kind, argument, Optional.of(text), false, text, only);
    }

    Input optional() {
        return new Input(name, kind, argument, usual, false, example, only);
    }

    Input like(String shown) {
        return new Input(name, kind, argument, usual, needed, shown, only);
    }

    Input only(String input, String... codes) {
        return new Input(name, kind, argument, usual, needed, example, Optional.of(new Only(input, Set.of(codes))));
    }

    /** An option, though the command line takes tables by their place as a rule. */
    Input named() {
        return new Input(name, kind, Optional.empty(), usual, needed, example, only);
    }

    /** Tells whether rows are asked. */
    public boolean isTable() {
        return kind instanceof Kind.Rows;
    }

    /** Tells whether it is asked when the choices stand as given. */
    public boolean isAsked(Given given) {
        return only.isEmpty()
                || only.get().codes().contains(given.text(only.get().input()).orElse(""));
    }
}
