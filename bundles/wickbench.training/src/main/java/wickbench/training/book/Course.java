package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.training.Competence;
import wickbench.training.Competence.Clash;
import wickbench.training.CompetenceMove;
import wickbench.training.CompetenceState;
import wickbench.training.Lapse;
import wickbench.training.Terms;

/** One person's competence in one method, let go from the first step to the last. */
final class Course {
    private final PersonId person;
    private final MethodId method;
    private final ZoneId zone;
    private CompetenceState state = CompetenceState.NEVER;
    private Terms terms = Terms.USUAL;
    private Optional<LocalDate> until = Optional.empty();
    private Optional<LocalDate> reckoned = Optional.empty();
    private Optional<Lapse> lapse = Optional.empty();
    private Optional<LocalDate> tested = Optional.empty();
    private Optional<Integer> version = Optional.empty();
    private int read;
    private Optional<String> why = Optional.empty();
    private Optional<UUID> decided = Optional.empty();
    private final Set<UUID> suspensions = new LinkedHashSet<>();
    private final List<Clash> clashes = new ArrayList<>();

    private Course(PersonId person, MethodId method, ZoneId zone) {
        this.person = person;
        this.method = method;
        this.zone = zone;
    }

    /** Lets the steps up to an instant happen, and the calendar between them. */
    static Competence of(PersonId person, MethodId method, ZoneId zone, List<Step> steps, Instant at) {
        Course course = new Course(person, method, zone);
        steps.stream()
                .filter(step -> !step.at().isAfter(at))
                .sorted(Comparator.comparing(Step::at))
                .forEach(course::take);
        course.calendar(at);
        return course.competence();
    }

    private void take(Step step) {
        calendar(step.at());
        if (step instanceof Step.Termed termed) {
            terms = termed.terms();
        } else if (step instanceof Step.Tested) {
            tested = Optional.of(day(step.at()));
            reckoned = tested;
        } else if (step instanceof Step.Issued issued) {
            issued(issued);
        } else if (step instanceof Step.Authorised authorised) {
            authorised(authorised);
        } else if (step instanceof Step.Suspended suspended) {
            suspended(suspended);
        } else if (step instanceof Step.Acknowledged acknowledged) {
            read = Math.max(read, acknowledged.version());
            if (current()) {
                move(CompetenceMove.ACKNOWLEDGE, acknowledged.entry());
            }
        }
    }

    /** Lets the term end, or the weeks without a strip, whichever comes first. */
    private void calendar(Instant at) {
        LocalDate today = day(at);
        Optional<LocalDate> last = lastDay();
        if (last.filter(today::isAfter).isPresent() && state.compareTo(CompetenceState.UNREAD) <= 0) {
            boolean term = until.filter(last.get()::equals).isPresent();
            state = CompetenceMove.LAPSE.from(state).orElseThrow();
            lapse = Optional.of(new Lapse(
                    term ? Lapse.Cause.TERM : Lapse.Cause.UNTESTED, last.get().plusDays(1)));
        }
    }

    private Optional<LocalDate> untestedUntil() {
        return reckoned.map(day -> day.plusWeeks(terms.untestedWeeks()));
    }

    private Optional<LocalDate> lastDay() {
        return untestedUntil()
                .filter(day -> until.filter(term -> !term.isAfter(day)).isEmpty())
                .or(() -> until);
    }

    private void issued(Step.Issued issued) {
        version = issued.version();
        if (!current()) {
            state = CompetenceMove.REVISE.from(state).orElseThrow();
        }
    }

    /** Tells whether the version in force is read, where one is known. */
    private boolean current() {
        return version.filter(newest -> newest > read).isEmpty();
    }

    private void authorised(Step.Authorised step) {
        suspensions.removeAll(step.answers());
        CompetenceMove move = step.restores() ? CompetenceMove.RESTORE : CompetenceMove.AUTHORISE;
        if (step.restores() && !suspensions.isEmpty()) {
            // another suspension, of which this decision did not know
            return;
        }
        if (move(move, step.entry())) {
            until = Optional.of(step.until());
            reckoned = Optional.of(day(step.at()));
            lapse = Optional.empty();
            read = Math.max(read, step.version().or(() -> version).orElse(0));
            decision(step.reason(), step.entry());
            if (!current()) {
                state = CompetenceMove.REVISE.from(state).orElseThrow();
            }
        }
    }

    private void suspended(Step.Suspended step) {
        if (step.everyMethod() && CompetenceMove.SUSPEND.from(state).isEmpty()) {
            return;
        }
        if (!move(CompetenceMove.SUSPEND, step.entry())) {
            // it names the method, so where it was decided an authorisation was known: a clock is wrong, and caution
            // holds
            state = CompetenceState.SUSPENDED;
        }
        suspensions.add(step.entry());
        decision(step.reason(), step.entry());
    }

    private void decision(String reason, UUID entry) {
        why = Optional.of(reason);
        decided = Optional.of(entry);
    }

    private boolean move(CompetenceMove move, UUID entry) {
        Optional<CompetenceState> next = move.from(state);
        if (next.isEmpty()) {
            clashes.add(new Clash(entry, move, state));
        }
        next.ifPresent(reached -> state = reached);
        return next.isPresent();
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    private Competence competence() {
        boolean known = state != CompetenceState.NEVER;
        return new Competence(
                person,
                method,
                state,
                until.filter(day -> known),
                untestedUntil().filter(day -> known),
                lapse.filter(found -> state == CompetenceState.LAPSED),
                tested,
                read,
                version,
                why,
                decided,
                List.copyOf(suspensions),
                clashes);
    }
}
