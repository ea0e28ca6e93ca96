package wickbench.api.profile;

import wickbench.api.words.Coded;

/** How often a run control of a kit is asked for. */
public enum Often implements Coded {
    /** In each run that uses the kit; strips that belong to no run count as one run a day. */
    RUN,
    /** On each of the site's days on which the kit is used. */
    DAY
}
