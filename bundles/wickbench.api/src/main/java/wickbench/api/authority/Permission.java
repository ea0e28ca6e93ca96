package wickbench.api.authority;

import wickbench.api.check.Refusal;

/** Whether somebody may do something now. */
public sealed interface Permission {

    /** Nothing speaks against it. */
    record Allowed() implements Permission {}

    /**
     * A rule says no.
     *
     * @param code which rule, for example {@code people.role}
     * @param text the reason in one line
     */
    record Denied(String code, String text) implements Permission {}

    default boolean allowed() {
        return this instanceof Allowed;
    }

    /** Ends the act with {@link Refusal} unless it is allowed. */
    default void orRefuse() {
        if (this instanceof Denied denied) {
            throw new Refusal(denied.code(), denied.text());
        }
    }
}
