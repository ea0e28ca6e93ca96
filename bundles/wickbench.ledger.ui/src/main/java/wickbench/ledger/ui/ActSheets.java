package wickbench.ledger.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.person.PersonId;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.acts.Deciding.Wish;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Subject;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;

/** The sheets on which people put their names under reviews, decisions and releases. */
record ActSheets(PageContext context, ActDoors doors, Shell window) {

    Shell review(List<UUID> results, ActDoors.Rights rights, WhoIsWho people, Runnable done) {
        PersonId by = rights.actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                asked("review", String.valueOf(results.size()), by, people, Optional.empty(), rights.keyed()),
                (passphrase, reason) -> doors.reviewing().review(results, Optional.empty(), by, passphrase),
                entry -> {
                    context.say(LedgerUiWords.get(entry.isPresent() ? "review.done" : "review.none", results.size()));
                    done.run();
                });
    }

    /**
     * Signs a correction.
     *
     * @param changed by the columns of a run sheet
     * @param wrong says of a cell what is wrong with it
     */
    Shell correct(
            ResultDetail before,
            Map<String, String> changed,
            PersonId by,
            boolean keyed,
            WhoIsWho people,
            Function<Complaint, String> wrong,
            Runnable done) {
        String sample = before.row().sample();
        return SignSheet.open(
                context,
                window,
                asked("correct", sample, by, people, Optional.of(LedgerUiWords.get("act.reason")), keyed),
                (passphrase, reason) -> {
                    try {
                        return doors.correcting().correct(before, changed, reason, by, passphrase);
                    } catch (BadInput cells) {
                        throw new IllegalArgumentException(
                                cells.complaints().stream().map(wrong).collect(Collectors.joining("\n")), cells);
                    }
                },
                kept -> {
                    context.say(LedgerUiWords.get("correct.done", sample, kept.ref()));
                    done.run();
                });
    }

    /** What somebody wants to decide of a case. */
    record Choice(UUID result, Move move, List<String> products, Optional<String> cause) {}

    Shell decide(Choice choice, String sample, ActDoors.Rights rights, WhoIsWho people, Runnable done) {
        PersonId by = rights.actor().orElseThrow();
        String what = LedgerUiWords.get("move." + choice.move().code());
        return SignSheet.open(
                context,
                window,
                asked(
                        "decide",
                        LedgerUiWords.get("decide.what", what, sample),
                        by,
                        people,
                        Optional.of(LedgerUiWords.get("act.reason")),
                        rights.keyed()),
                (passphrase, reason) -> doors.deciding()
                        .decide(
                                new Wish(choice.result(), choice.move(), choice.products(), reason, choice.cause()),
                                by,
                                passphrase),
                entry -> {
                    context.say(LedgerUiWords.get("decide.done", what, sample, entry));
                    done.run();
                });
    }

    Shell release(Subject subject, ActDoors.Rights rights, WhoIsWho people, Runnable done) {
        PersonId by = rights.actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                asked(
                        "release",
                        subject.name(),
                        by,
                        people,
                        Optional.of(LedgerUiWords.get("act.reason")),
                        rights.keyed()),
                (passphrase, reason) -> doors.releasing().release(subject, reason, by, passphrase),
                entry -> {
                    context.say(LedgerUiWords.get("release.done", subject.name(), entry));
                    done.run();
                });
    }

    /** Signs what a line asks for; its reason is asked on the sheet. */
    Shell plan(ReleasePlan plan, ActDoors.Rights rights, WhoIsWho people, Runnable done) {
        PersonId by = rights.actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                asked("plan", plan.line(), by, people, Optional.of(LedgerUiWords.get("act.reason")), rights.keyed()),
                (passphrase, reason) ->
                        doors.releasing().plan(new ReleasePlan(plan.line(), plan.points(), reason), by, passphrase),
                entry -> {
                    context.say(LedgerUiWords.get("plan.done", plan.line(), entry));
                    done.run();
                });
    }

    private static Asked asked(
            String act, String what, PersonId by, WhoIsWho people, Optional<String> reason, boolean keyed) {
        return new Asked(
                LedgerUiWords.get(act + ".title", what),
                people.full(by),
                LedgerUiWords.get(act + ".meaning"),
                LedgerUiWords.get(act + ".verb"),
                reason,
                keyed);
    }
}
