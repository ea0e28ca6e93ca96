package wickbench.testing;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names the clauses of published requirements that a test shows to be met; {@code docs/requirements.md} is made from it. */
@Documented
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.SOURCE)
public @interface Meets {
    /** Returns texts and clauses as {@code requirements.csv} spells them, such as {@code 21 CFR 117.305(a)}. */
    String[] value();
}
