package wickbench.bench.ui;

/** Hears what became of the strips of a run that has not begun. */
interface NewRunHearer {
    /** Hears that other strips stand in the list, or why none came; {@code note} is said until one goes on with the form. */
    void listed(String note);

    /** Hears what went wrong, or what is to be done first. */
    void say(String text);
}
