package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Recovery.Witness;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/**
 * Brings somebody back by the code that lay sealed: first the code before a witness, then an own passphrase.
 *
 * <p>Between the two stands a phrase for once that they know, so that nothing is lost when the second is never done.
 */
record RecoverForm(PageContext context, PeopleDoors doors, HouseForms.Side side, Runnable done) {

    /** What is typed and chosen. */
    private record Typed(
            Field<Text> code,
            Optional<Field<Combo>> witness,
            Optional<Field<Text>> secret,
            Field<Text> reason,
            Fresh phrase,
            List<PersonRow> others) {

        Optional<PersonRow> chosen() {
            int at = witness.map(field -> field.control().getSelectionIndex()).orElse(-1);
            return at < 0 ? Optional.empty() : Optional.of(others.get(at));
        }

        /** Says below a field what is missing there. */
        boolean complete() {
            witness.ifPresent(Field::clear);
            secret.ifPresent(Field::clear);
            reason.clear();
            if (witness.isPresent() && chosen().isEmpty()) {
                return missing(witness.get(), "recover.stands-by.missing");
            }
            boolean keyed =
                    chosen().filter(row -> row.secret() == Secret.PASSPHRASE).isPresent();
            if (keyed && secret.orElseThrow().control().getCharCount() == 0) {
                return missing(secret.orElseThrow(), "recover.secret.missing");
            }
            return !reason.control().getText().isBlank() || missing(reason, "recover.reason.missing");
        }

        private static boolean missing(Field<?> field, String key) {
            field.complain(PeopleUiWords.get(key));
            field.control().setFocus();
            return false;
        }

        Optional<Witness> stands() {
            return chosen().map(row -> new Witness(
                    row.person().id(),
                    row.secret() == Secret.PASSPHRASE
                            ? Optional.of(Section.take(secret.orElseThrow()))
                            : Optional.empty()));
        }
    }

    /**
     * Asks for the code.
     *
     * @param who who comes back, and is an administrator then
     * @param others everybody else, of whom one stands by
     * @param may whether a code lies sealed
     */
    void fill(Composite parent, PersonRow who, List<PersonRow> others, Permission may) {
        context.theme().controls().label(parent, Type.TITLE, who.person().display());
        Section section = new Section(parent, context, "recover", side::measure).main();
        Typed typed = fields(section, others);
        Passphrase[] once = new Passphrase[1];
        section.act(
                "recover.act",
                may,
                () -> work(who.person().id(), typed).map(held -> {
                    once[0] = held.once();
                    return held.work();
                }),
                () -> side.fill(next -> renew(next, who, once[0])));
        typed.code().control().setFocus();
    }

    private static Typed fields(Section section, List<PersonRow> others) {
        Field<Text> code = section.text("recover.code");
        boolean alone = others.isEmpty();
        Optional<Field<Combo>> witness = alone
                ? Optional.empty()
                : Optional.of(section.choice(
                        "recover.stands-by",
                        others.stream().map(RecoverForm::named).toList()));
        Optional<Field<Text>> secret = alone ? Optional.empty() : Optional.of(section.secret("recover.secret"));
        Field<Text> reason = section.text("recover.reason");
        return new Typed(code, witness, secret, reason, Fresh.in(section, "phrase"), others);
    }

    private static String named(PersonRow row) {
        return PeopleUiWords.get(
                "recover.named", row.person().display(), row.person().id());
    }

    private record Held(Passphrase once, Work<PersonId> work) {}

    private Optional<Held> work(PersonId who, Typed typed) {
        if (!typed.complete()) {
            return Optional.empty();
        }
        return typed.phrase().take().map(once -> {
            // the code stays in its field: it is long, and spent once it was right
            Passphrase code = Passphrase.of(typed.code().control().getTextChars());
            Optional<Witness> witness = typed.stands();
            String reason = typed.reason().control().getText();
            return new Held(once, progress -> {
                doors.recovery().byCode(who, once, code, witness, reason);
                return who;
            });
        });
    }

    private void renew(Composite parent, PersonRow who, Passphrase once) {
        context.theme().controls().label(parent, Type.TITLE, who.person().display());
        Section section = new Section(parent, context, "renew", side::measure).main();
        Fit.wide(new Note(section.card(), context.theme(), Meaning.CAUTION, PeopleUiWords.get("renew.seal")));
        Fresh fresh = Fresh.in(section, "fresh");
        section.act(
                "renew.act",
                new Permission.Allowed(),
                () -> fresh.take().<Work<PersonId>>map(typed -> progress -> {
                    doors.credentials().set(who.person().id(), Optional.of(once), typed);
                    once.close();
                    return who.person().id();
                }),
                done);
        fresh.first().control().setFocus();
    }
}
