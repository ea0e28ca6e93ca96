package wickbench.training.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.training.Round;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What can be done with a round as it stands; what cannot be done is disabled, and it says why. */
final class RoundActs {
    private final PageContext context;
    private final TrainingDoors doors;
    private final RoundList.Known known;
    private final RoundsView.Going going;
    private final Runnable changed;
    private final Runnable grown;
    private final List<String> reasons = new ArrayList<>();
    private RoundForms forms;
    private RoundPapers papers;
    private SaidLine said;

    RoundActs(
            PageContext context,
            TrainingDoors doors,
            RoundList.Known known,
            RoundsView.Going going,
            Runnable grown,
            Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.going = going;
        this.grown = grown;
        this.changed = changed;
    }

    void fill(Composite room, RoundList.Whole whole) {
        Theme theme = context.theme();
        Round round = whole.round();
        Composite row = theme.controls().row(room);
        Composite notes = theme.controls().box(room, 1);
        Fit.wide(notes);
        said = new SaidLine(notes, theme, grown);
        papers = new RoundPapers(context, doors, said);
        forms = new RoundForms(context, doors, known, Fit.wide(theme.controls().box(room, 1)), grown);
        switch (round.state()) {
            case OPEN -> open(row, round);
            case CLOSED -> score(row, round);
            case SCORED -> seen(row, round);
        }
        theme.controls().button(row, TrainingUiWords.get("round.report"), () -> papers.report(whole));
        reasons.stream().distinct().forEach(reason -> theme.controls().text(notes, Type.SMALL, reason));
    }

    private void open(Composite row, Round round) {
        Optional<PersonId> actor = known.site().rights().actor();
        boolean mine = actor.filter(who -> round.missing().contains(who)).isPresent();
        button(row, "round.call", mine, whyNot(round, actor), () -> going.call(round, actor.orElseThrow()));
        List<PersonId> callers =
                keeps() ? round.missing() : actor.filter(who -> mine).stream().toList();
        button(
                row,
                "round.sheet",
                !callers.isEmpty(),
                "",
                () -> forms.sheet(round, callers, kept -> done(TrainingUiWords.get("round.sheet.done", kept.id()))));
        button(row, "round.blank", true, "", () -> papers.blank(round));
        button(row, "round.close", keeps(), denied(known.site().rights().keep()), () -> close(round));
    }

    private static String whyNot(Round round, Optional<PersonId> actor) {
        if (actor.isEmpty()) {
            return TrainingUiWords.get("desk.nobody");
        }
        return TrainingUiWords.get(
                round.plan().callers().contains(actor.get()) ? "round.call.done" : "round.call.not-reader");
    }

    private boolean keeps() {
        return known.site().rights().keep().allowed();
    }

    private static String denied(Permission permission) {
        return permission instanceof Permission.Denied denied ? denied.text() : "";
    }

    private void button(Composite row, String key, boolean may, String reason, Runnable act) {
        Button button = context.theme().controls().button(row, TrainingUiWords.get(key), act);
        button.setEnabled(may);
        if (!may && !reason.isEmpty()) {
            reasons.add(reason);
        }
    }

    /** Opens the key; who is missing is left out with a reason, or it is refused. */
    private void close(Round round) {
        if (round.missing().isEmpty()) {
            PersonId by = known.site().rights().actor().orElseThrow();
            context.jobs()
                    .run(
                            TrainingUiWords.get("round.closing"),
                            progress ->
                                    doors.blind().rounds().close(round.id(), List.of(), Optional.empty(), Actor.of(by)),
                            this::closed,
                            said::refuse);
        } else {
            forms.close(round, this::closed);
        }
    }

    private void closed(Round round) {
        done(TrainingUiWords.get("round.closed.done", round.id()));
    }

    private void score(Composite row, Round round) {
        Permission may = known.site().rights().score();
        button(
                row,
                "round.score",
                may.allowed(),
                denied(may),
                () -> sign(row, "score", round, by -> doors.blind().rounds().score(round.id(), by)));
    }

    private void seen(Composite row, Round round) {
        Optional<PersonId> actor = known.site().rights().actor();
        boolean scored = actor.filter(who -> round.scoreOf(who).isPresent()).isPresent();
        boolean owes = scored && actor.filter(round.seen()::contains).isEmpty();
        button(
                row,
                "round.seen",
                owes,
                TrainingUiWords.get(scored ? "round.seen.already" : "round.seen.own"),
                () -> sign(row, "seen", round, by -> {
                    doors.training().countersign(round.scored().orElseThrow(), by);
                    return round;
                }));
    }

    /** Something that is signed. */
    @FunctionalInterface
    private interface Signed {
        Round act(Actor by);
    }

    private void sign(Composite row, String what, Round round, Signed act) {
        PersonId by = known.site().rights().actor().orElseThrow();
        String title = TrainingUiWords.get("sign." + what, round.id());
        SignSheet.open(
                context,
                row.getShell(),
                new Asked(
                        title,
                        known.site().who(by),
                        TrainingUiWords.get("meaning." + what),
                        TrainingUiWords.get("verb." + what),
                        Optional.empty(),
                        known.site().rights().keyed()),
                (passphrase, none) -> {
                    act.act(new Actor(by, passphrase));
                    return passphrase.isPresent();
                },
                signed -> done(TrainingUiWords.get(signed ? "done.signed" : "done.unsigned", title)));
    }

    private void done(String words) {
        context.say(words);
        changed.run();
    }
}
