package wickbench.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import wickbench.api.person.PersonId;

/**
 * Who stands at a line in a shift.
 *
 * @param second who reads strips a second time, from the next line
 */
record Crew(PersonId operator, PersonId second) {
    private static final LocalDate A_MONDAY = LocalDate.of(2024, 1, 1);

    /** Returns the crew of a line: teams change shifts from week to week, and people change lines every few weeks. */
    static Crew of(Plant plant, int line, LocalDate day, int shift) {
        List<PersonId> operators = plant.operators();
        int lines = plant.lines().size();
        int week = (int) ChronoUnit.WEEKS.between(A_MONDAY, day);
        int team = (week + shift) * lines % operators.size();
        int turn = week / lines + line;
        return new Crew(operators.get(team + turn % lines), operators.get(team + (turn + 1) % lines));
    }
}
