package wickbench.plant.changeover;

import wickbench.api.words.Coded;

/** Why a change must not be made as things stand; the graver first. */
public enum Fault implements Coded {
    /** Of one of the products nobody has said which allergens it holds, which is not the same as none. */
    NOT_STATED,
    /** Stations stated something that it rests on differently, and nobody has settled by which word it stands. */
    DISPUTED,
    /** No issued method sees an allergen that leaves, in the form in which it is there. */
    UNCOVERED,
    /** A method would see it, but no point of the line is sampled by it. */
    NO_POINT,
    /** No clean of the line is meant for it. */
    NO_CLEAN,
    /** The clean was never shown to work for it here, or is so no longer. */
    NOT_VALIDATED
}
