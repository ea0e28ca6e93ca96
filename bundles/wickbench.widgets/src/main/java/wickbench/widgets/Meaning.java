package wickbench.widgets;

/** What a colour says; never said by the colour alone. */
public enum Meaning {
    /** Nothing to say. */
    NEUTRAL,
    /** As it should be, within what was looked at. */
    CALM,
    /** Allergen detected, refused, failed. */
    ALARM,
    /** Above range: more than an alarm can tell. */
    EXTREME,
    /** Not usable as it stands; something is owed. */
    CAUTION,
    /** To be known. */
    NOTICE
}
