package wickbench.api.reading;

import wickbench.api.words.Coded;

/** Why a second reader is asked for. */
public enum SecondLook implements Coded {
    /** A line that tells of the allergen was faint. */
    FAINT,
    /** The strip looks negative and was drawn. */
    DRAWN
}
