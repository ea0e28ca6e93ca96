package wickbench.widgets;

import java.util.Optional;

/**
 * What a table asks its source for.
 *
 * @param filter what stands in the filter box; blank means all
 * @param sort as the person wants it; empty means the source's own order
 */
public record Ask(String filter, Optional<Sort> sort) {}
