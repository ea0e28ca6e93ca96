package wickbench.training.book;

import wickbench.api.person.PersonId;

/** What a person may sign as seen: what others found of them. */
final class Countersigned {
    private Countersigned() {}

    static boolean concerns(Told told, PersonId person) {
        return switch (told.kind()) {
            case Kinds.OBSERVED -> told.fields().text("person").equals(person.value());
            case Kinds.SCORED ->
                told.fields().children("scores").stream()
                        .anyMatch(score -> score.text("reader").equals(person.value()));
            default -> false;
        };
    }
}
