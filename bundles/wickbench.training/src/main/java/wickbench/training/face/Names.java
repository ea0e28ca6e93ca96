package wickbench.training.face;

import wickbench.api.person.PersonId;

/** Finds the name of a person, or their id where there is none. */
@FunctionalInterface
interface Names {
    String of(PersonId id);
}
