package wickbench.training.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.training.Actor;
import wickbench.training.Competence;
import wickbench.training.CompetenceMove;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Authorises, suspends, restores and acknowledges, each under a name. */
record CompetenceActs(
        PageContext context, TrainingDoors doors, TrainingDoors.Known known, Shell window, Runnable changed) {

    /** Does one of the acts. */
    @FunctionalInterface
    private interface Acting {
        void act(Competence cell, String reason, Actor by);
    }

    /** Makes the buttons; what cannot be done is disabled, and it says why. */
    void fill(Composite room, Competence cell) {
        Theme theme = context.theme();
        Composite buttons = theme.controls().row(room);
        Permission authorise = known.rights().authorise();
        Permission suspend = known.rights().suspend();
        button(
                buttons,
                cell,
                CompetenceMove.AUTHORISE,
                authorise,
                (each, reason, by) ->
                        doors.training().authorise(each.person(), each.method(), Optional.empty(), reason, by));
        button(
                buttons,
                cell,
                CompetenceMove.SUSPEND,
                suspend,
                (each, reason, by) -> doors.training()
                        .suspend(each.person(), Optional.of(each.method()), Optional.empty(), reason, by));
        button(
                buttons,
                cell,
                CompetenceMove.RESTORE,
                authorise,
                (each, reason, by) ->
                        doors.training().restore(each.person(), each.method(), Optional.empty(), reason, by));
        Button read = theme.controls()
                .button(
                        buttons,
                        TrainingUiWords.get("act.acknowledge"),
                        () -> sign(
                                cell,
                                CompetenceMove.ACKNOWLEDGE,
                                (each, reason, by) -> doors.training().acknowledge(each.method(), by)));
        boolean unread = cell.version().filter(version -> version > cell.read()).isPresent();
        read.setEnabled(
                unread && known.rights().actor().filter(cell.person()::equals).isPresent());
        if (authorise instanceof Permission.Denied denied) {
            theme.controls().text(room, Type.SMALL, denied.text());
        }
        if (suspend instanceof Permission.Denied denied && !authorise.equals(suspend)) {
            theme.controls().text(room, Type.SMALL, denied.text());
        }
        if (unread && !read.isEnabled()) {
            theme.controls().text(room, Type.SMALL, TrainingUiWords.get("act.acknowledge.own"));
        }
    }

    private void button(Composite row, Competence cell, CompetenceMove move, Permission may, Acting acting) {
        Button button = context.theme()
                .controls()
                .button(row, TrainingUiWords.get("act." + move.code()), () -> sign(cell, move, acting));
        button.setEnabled(may.allowed() && move.from(cell.state()).isPresent());
    }

    private void sign(Competence cell, CompetenceMove move, Acting acting) {
        PersonId by = known.rights().actor().orElseThrow();
        String name = known.name(cell.person());
        boolean reasoned = move != CompetenceMove.ACKNOWLEDGE;
        SignSheet.open(
                context,
                window,
                new Asked(
                        TrainingUiWords.get("sign." + move.code(), name, cell.method()),
                        known.who(by),
                        TrainingUiWords.get("meaning." + move.code()),
                        TrainingUiWords.get("act." + move.code())
                                .replace("…", "")
                                .strip(),
                        reasoned ? Optional.of(TrainingUiWords.get("sign.reason")) : Optional.empty(),
                        known.rights().keyed()),
                (Optional<Passphrase> passphrase, String reason) -> {
                    acting.act(cell, reason, new Actor(by, passphrase));
                    return passphrase.isPresent();
                },
                signed -> {
                    context.say(TrainingUiWords.get(
                            signed ? "done.signed" : "done.unsigned",
                            TrainingUiWords.get("sign." + move.code(), name, cell.method())));
                    changed.run();
                });
    }
}
