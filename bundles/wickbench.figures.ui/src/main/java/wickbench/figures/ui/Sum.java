package wickbench.figures.ui;

import java.util.List;
import java.util.function.Function;

/**
 * One sum of the page; its words are found by its id.
 *
 * @param id the key of its title, formula and source
 * @param inputs what is asked, in order
 * @param compute gives the answer, or ends with {@link wickbench.figures.NoAnswer}
 */
record Sum(String id, List<Input> inputs, Function<Given, Answer> compute) {

    /**
     * A field of the form.
     *
     * @param name as the sum names it when it complains; the key of its label, which holds the unit
     * @param first what stands in it at first; empty when the field may stay empty
     */
    record Input(String name, String first) {}

    static Input input(String name, String first) {
        return new Input(name, first);
    }
}
