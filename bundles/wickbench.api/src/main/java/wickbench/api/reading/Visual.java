package wickbench.api.reading;

import wickbench.api.words.Coded;

/** What the eye said before the test. */
public enum Visual implements Coded {
    CLEAN,
    SOILED
}
