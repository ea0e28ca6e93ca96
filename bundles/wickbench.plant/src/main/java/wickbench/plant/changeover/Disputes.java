package wickbench.plant.changeover;

import java.util.Set;

/**
 * What stations stated differently, neither having seen the other's word, and nobody has settled.
 *
 * @param subjects as clashes name them, for example {@code plant.product:milk-cream}
 */
public record Disputes(Set<String> subjects) {
    /** Begins every subject of the plant. */
    public static final String PLANT = "plant.";

    public static final Disputes NONE = new Disputes(Set.of());

    private static final String VALIDATION = "validation";

    public Disputes {
        subjects = Set.copyOf(subjects);
    }

    /**
     * Returns the subject of what is stated of one thing.
     *
     * @param sort the code of a sort of thing, for example {@code product}
     */
    public static String subject(String sort, String id) {
        return PLANT + sort + ":" + id;
    }

    /** Returns the subject of whether a clean was shown to work. */
    public static String validation(String clean) {
        return subject(VALIDATION, clean);
    }

    public boolean on(String sort, String id) {
        return subjects.contains(subject(sort, id));
    }

    /** Tells whether a clean, or whether it was shown to work, is in dispute. */
    public boolean onClean(String id) {
        return on("clean", id) || on(VALIDATION, id);
    }
}
