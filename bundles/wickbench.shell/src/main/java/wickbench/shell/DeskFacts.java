package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/** What the bars tell of the station: its name and clock, who acts, what is due, and what is wrong with the journal. */
final class DeskFacts {
    private static final int DUE_MILLIS = 60_000;

    private final Window window;
    private final Neighbours neighbours;
    private final Session session;
    private final PageJobs jobs;
    private final TopBar top;

    DeskFacts(Window window, TopBar top, Supplies supplies, JobBoard board) {
        this.window = window;
        this.neighbours = supplies.neighbours();
        this.session = supplies.session();
        this.top = top;
        jobs = new PageJobs(
                window.shell().getDisplay(),
                supplies.workers().pool(),
                () -> !top.person().isDisposed(),
                board,
                e -> window.say(Failures.plain(e)));
    }

    /** Shows them now, but for what is due, and keeps them up to date as long as the bar lives. */
    void show() {
        neighbours.journal().ifPresent(this::askStation);
        person(session.actor());
        Consumer<Optional<PersonId>> listener = this::person;
        session.onChange(listener);
        top.person().addListener(SWT.Dispose, event -> session.forget(listener));
    }

    private void askStation(Journal journal) {
        jobs.run(
                ShellWords.get("work.station"),
                progress -> journal.founding().isPresent()
                        ? Optional.of(journal.status())
                        : Optional.<JournalStatus>empty(),
                status -> status.ifPresent(this::station),
                failure -> window.say(Failures.plain(failure)));
    }

    private void station(JournalStatus status) {
        status.founding().ifPresent(founding -> top.station(founding.station().value(), founding.simulated()));
        List<String> wrong = new ArrayList<>(status.notices());
        status.readOnly().ifPresent(wrong::add);
        if (!wrong.isEmpty()) {
            window.say(String.join("  ", wrong));
        }
    }

    private void person(Optional<PersonId> actor) {
        top.person(actor.map(PersonId::value));
        actor.ifPresent(id -> neighbours
                .people()
                .ifPresent(people -> jobs.run(
                        ShellWords.get("work.people"),
                        progress -> people.find(id),
                        person -> top.person(
                                Optional.of(person.map(Person::display).orElse(id.value()))))));
    }

    /** Asks whether the first steps are all done, which takes their page out of the rail; without any, nobody knows. */
    void firstSteps() {
        List<FirstSteps> sources = neighbours.firstSteps();
        jobs.run(
                ShellWords.get("work.first"),
                progress -> sources.stream()
                        .flatMap(source -> source.steps().stream())
                        .filter(step -> window.has(step.page()))
                        .map(FirstStep::done)
                        .reduce(Boolean::logicalAnd)
                        .orElse(false),
                window::firstStepsDone);
    }

    /** Shows what is due, and again each minute as long as the bar lives. */
    void due() {
        if (top.person().isDisposed()) {
            return;
        }
        List<DueSource> sources = neighbours.dueSources();
        if (!sources.isEmpty()) {
            jobs.run(
                    ShellWords.get("work.due"),
                    progress -> sources.stream()
                            .flatMap(source -> source.due().stream())
                            .sorted(Due.MOST_URGENT_FIRST)
                            .toList(),
                    items -> top.due().show(items, item -> window.show(item.page(), Optional.of(item.argument()))));
        }
        if (!window.firstStepsDone()) {
            firstSteps();
        }
        top.person().getDisplay().timerExec(DUE_MILLIS, this::due);
    }
}
