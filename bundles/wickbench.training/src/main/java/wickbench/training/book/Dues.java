package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wickbench.training.BenchLight;
import wickbench.training.Competence;
import wickbench.training.CompetenceState;
import wickbench.training.Due;
import wickbench.training.Due.What;
import wickbench.training.Matrix;
import wickbench.training.Round;

/** What somebody must see to. */
final class Dues {
    private final Matrix matrix;
    private final ZoneId zone;
    private final List<Due> found = new ArrayList<>();

    Dues(Matrix matrix, ZoneId zone) {
        this.matrix = matrix;
        this.zone = zone;
    }

    List<Due> of(
            List<Round> rounds, List<Told> observed, List<Told> seen, List<BenchLight> lights, List<Told> suspended) {
        matrix.cells().forEach(cell -> cell(cell, suspended));
        Set<UUID> signed = seen.stream()
                .map(told -> UUID.fromString(told.fields().text("about")))
                .collect(Collectors.toSet());
        observed.stream()
                .filter(told -> !signed.contains(told.id()))
                .map(Watched::observation)
                .forEach(test -> add(
                        What.SIGN,
                        day(test.at()),
                        test.person().value(),
                        test.method().value()));
        rounds.forEach(this::round);
        lights.stream().filter(BenchLight::dim).forEach(light -> add(What.LIGHT, day(light.at()), "", light.bench()));
        found.sort(Comparator.comparing((Due due) -> due.what().ordinal())
                .thenComparing(Due::day)
                .thenComparing(Due::person)
                .thenComparing(Due::about));
        return List.copyOf(found);
    }

    private void cell(Competence cell, List<Told> suspended) {
        String person = cell.person().value();
        String method = cell.method().value();
        if (!cell.clashes().isEmpty()) {
            add(What.SETTLE, matrix.day(), person, method);
        }
        switch (cell.state()) {
            case SUSPENDED -> add(What.SUSPENDED, since(cell, suspended), person, method);
            case LAPSED -> add(What.LAPSED, cell.lapse().orElseThrow().day(), person, method);
            case UNREAD -> add(What.ACKNOWLEDGE, matrix.day(), person, method);
            default -> {}
        }
        if (cell.state() == CompetenceState.AUTHORISED && matrix.dueSoon(cell)) {
            boolean term = cell.holdsUntil().equals(cell.until());
            add(term ? What.RENEW : What.TEST, cell.holdsUntil().orElseThrow(), person, method);
        }
    }

    private LocalDate since(Competence cell, List<Told> suspended) {
        return suspended.stream()
                .filter(told -> cell.suspensions().contains(told.id()))
                .map(told -> day(told.at()))
                .findFirst()
                .orElse(matrix.day());
    }

    private void round(Round round) {
        if (round.state() == Round.State.OPEN) {
            round.missing().forEach(person -> add(What.CALL, day(round.opened()), person.value(), round.id()));
        }
        if (round.state() == Round.State.CLOSED) {
            add(What.SCORE, day(round.key().orElseThrow().at()), "", round.id());
        }
        if (round.state() == Round.State.SCORED) {
            round.scores().stream()
                    .filter(score -> !round.seen().contains(score.reader()))
                    .forEach(score -> add(
                            What.SIGN,
                            day(round.key().orElseThrow().at()),
                            score.reader().value(),
                            round.id()));
        }
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    private void add(What what, LocalDate day, String person, String about) {
        found.add(new Due(what, day, person, about));
    }
}
