package wickbench.training;

import java.util.List;

/**
 * Questions as they were laid before one person: in an order of their own, and so the choices of each.
 *
 * @param set the questions' name
 */
public record Paper(String set, List<Item> items) {
    public Paper {
        items = List.copyOf(items);
    }

    /** A question with its choices as they were shown; which is right does not stand here. */
    public record Item(String id, String text, List<String> choices) {
        public Item {
            choices = List.copyOf(choices);
        }
    }
}
