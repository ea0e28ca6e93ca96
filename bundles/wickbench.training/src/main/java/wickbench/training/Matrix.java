package wickbench.training;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wickbench.api.method.MethodId;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/**
 * The skills matrix: people by methods, as of a day.
 *
 * @param people who are enrolled as operators, or of whom something is written here
 * @param methods that are in force, or that somebody was authorised for
 * @param cells one for each person and method, people first
 */
public record Matrix(LocalDate day, Terms terms, List<Person> people, List<MethodId> methods, List<Competence> cells) {
    public Matrix {
        people = List.copyOf(people);
        methods = List.copyOf(methods);
        cells = List.copyOf(cells);
    }

    public Optional<Competence> cell(PersonId person, MethodId method) {
        return cells.stream()
                .filter(cell -> cell.person().equals(person) && cell.method().equals(method))
                .findFirst();
    }

    /** Tells whether a cell holds today but not much longer. */
    public boolean dueSoon(Competence cell) {
        return cell.dueSoon(day, terms.remindDays());
    }
}
