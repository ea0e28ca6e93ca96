package wickbench.training.ui;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.training.Competence;
import wickbench.training.CompetenceMove;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Authorises, suspends, restores and acknowledges, each under a name. */
record CompetenceActs(
        PageContext context,
        TrainingDoors doors,
        TrainingDoors.Known known,
        Shell window,
        Runnable grown,
        Runnable changed) {

    /** Does one of the acts. */
    @FunctionalInterface
    private interface Acting {
        void act(Competence cell, String reason, Actor by);
    }

    /** Does one of the acts that have a term. */
    @FunctionalInterface
    private interface Termed {
        void act(Competence cell, Optional<LocalDate> until, String reason, Actor by);
    }

    /** Makes the buttons; what cannot be done is disabled, and it says why. */
    void fill(Composite room, Competence cell) {
        Theme theme = context.theme();
        Composite buttons = theme.controls().row(room);
        Composite below = Fit.wide(theme.controls().box(room, 1));
        Permission authorise = known.rights().authorise();
        Permission suspend = known.rights().suspend();
        button(
                buttons,
                cell,
                CompetenceMove.AUTHORISE,
                authorise,
                () -> term(
                        below,
                        cell,
                        CompetenceMove.AUTHORISE,
                        (each, until, reason, by) ->
                                doors.training().authorise(each.person(), each.method(), until, reason, by)));
        button(
                buttons,
                cell,
                CompetenceMove.SUSPEND,
                suspend,
                () -> sign(
                        cell,
                        CompetenceMove.SUSPEND,
                        (each, reason, by) -> doors.training()
                                .suspend(each.person(), Optional.of(each.method()), Optional.empty(), reason, by)));
        button(
                buttons,
                cell,
                CompetenceMove.RESTORE,
                authorise,
                () -> term(
                        below,
                        cell,
                        CompetenceMove.RESTORE,
                        (each, until, reason, by) ->
                                doors.training().restore(each.person(), each.method(), until, reason, by)));
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

    private void button(Composite row, Competence cell, CompetenceMove move, Permission may, Runnable act) {
        Button button = context.theme().controls().button(row, TrainingUiWords.get("act." + move.code()), act);
        button.setEnabled(may.allowed() && move.from(cell.state()).isPresent());
    }

    /** Asks how long it shall hold; the site's usual term stands there already. */
    private void term(Composite below, Competence cell, CompetenceMove move, Termed acting) {
        LocalDate usual = known.matrix().terms().lastDay(known.matrix().day());
        AsideForm form = new AsideForm(
                below,
                context,
                TrainingUiWords.get("sign." + move.code(), known.name(cell.person()), cell.method()),
                TrainingUiWords.get("term.line", known.matrix().terms().months()),
                grown);
        Field<Text> until = form.form().text(TrainingUiWords.get("term.until"));
        until.control().setText(usual.toString());
        Runnable go = () -> day(until)
                .ifPresent(day -> sign(
                        cell,
                        move,
                        (each, reason, by) -> acting.act(
                                each, Optional.of(day).filter(chosen -> !chosen.equals(usual)), reason, by)));
        until.control().addListener(SWT.DefaultSelection, event -> go.run());
        form.button(TrainingUiWords.get("term.go"), go);
        until.control().setFocus();
        until.control().selectAll();
    }

    private static Optional<LocalDate> day(Field<Text> field) {
        try {
            Optional<LocalDate> day =
                    Optional.of(LocalDate.parse(field.control().getText().strip()));
            field.clear();
            return day;
        } catch (DateTimeParseException e) {
            field.complain(TrainingUiWords.get("term.expected"));
            return Optional.empty();
        }
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
