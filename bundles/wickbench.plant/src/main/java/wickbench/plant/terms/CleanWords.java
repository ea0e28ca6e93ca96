package wickbench.plant.terms;

import wickbench.plant.clean.Series;
import wickbench.plant.clean.Validation;

/** Says in words how far a clean has been shown to work. */
public final class CleanWords {
    private CleanWords() {}

    /** Returns how many cleans in a row have passed, as far as a series is under way, or what it has come to. */
    public static String passes(Validation clean) {
        return PlantWords.get("series." + clean.state().code(), clean.passes(), Series.PASSES);
    }
}
