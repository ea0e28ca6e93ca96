package wickbench.api.part;

import java.util.List;
import java.util.Optional;

/**
 * An install set as this program knows it.
 *
 * @param name by which it is removed, such as {@code training}
 * @param version three numbers with points between them
 * @param title what people call it
 * @param description in one sentence; may be empty
 * @param requires names of the sets it stands on
 * @param maker who signed it; empty for a set of the product itself
 * @param trouble why it does not run; empty unless it was refused
 */
public record PartSet(
        String name,
        String version,
        String title,
        String description,
        List<String> requires,
        Standing standing,
        Brings brings,
        Optional<String> maker,
        Optional<String> trouble) {
    public PartSet {
        requires = List.copyOf(requires);
    }
}
