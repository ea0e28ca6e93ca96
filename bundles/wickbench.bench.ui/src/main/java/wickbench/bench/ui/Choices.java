package wickbench.bench.ui;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.person.Person;

/** Whom and what one can choose at the bench. */
record Choices(List<Person> people, List<Method> methods) {
    Choices {
        people = List.copyOf(people);
        methods = List.copyOf(methods);
    }

    List<Pick> peoplePicks() {
        return people.stream()
                .map(person -> new Pick(person.id().value(), person.name().orElse("")))
                .toList();
    }

    List<Pick> methodPicks() {
        return methods.stream().map(Choices::pick).toList();
    }

    static Pick pick(Method method) {
        return new Pick(method.ref().id().value(), method.title());
    }

    /** Returns the method in force with this id, in any case of letters. */
    Optional<Method> method(String typed) {
        String id = typed.strip().toLowerCase(Locale.ROOT);
        return methods.stream()
                .filter(method -> method.ref().id().value().equals(id))
                .findFirst();
    }

    /** Returns the method where there is no choice. */
    Optional<Method> onlyMethod() {
        return methods.size() == 1 ? Optional.of(methods.get(0)) : Optional.empty();
    }
}
