package wickbench.plant.terms;

/** What the command line says, for pages that say the same. */
public final class PlantTerms {
    private PlantTerms() {}

    /** Returns what is said under a key of this bundle's words. */
    public static String said(String key, Object... values) {
        return PlantWords.get(key, values);
    }
}
