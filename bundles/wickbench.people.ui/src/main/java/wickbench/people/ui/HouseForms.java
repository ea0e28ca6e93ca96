package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Type;

/** What can be done about the house as a whole: enrol one more, seal a recovery code, and come back by it. */
record HouseForms(PageContext context, PeopleDoors doors, Side side, Runnable reload) {

    /** The side of the page. */
    interface Side {
        void fill(Consumer<Composite> content);

        void measure();
    }

    private interface Form {
        void fill(PersonId actor, Permission may);
    }

    void enrol() {
        form(
                Act.ENROL_PERSON,
                (actor, may) -> side.fill(
                        content -> new EnrolForm(doors).fill(content, context, actor, may, side::measure, reload)));
    }

    void envelope() {
        Envelope envelope = new Envelope(doors, context);
        form(
                Act.SEAL_RECOVERY,
                (actor, may) -> side.fill(content -> envelope.fill(
                        content,
                        actor,
                        proved(may),
                        side::measure,
                        code -> side.fill(shown -> envelope.show(shown, code, reload)))));
    }

    /** Says that nobody is signed in, and offers the way back by the sealed code. */
    void nobody(Composite content, PersonRow row, List<PersonRow> everyone) {
        context.theme().controls().text(content, Type.BODY, PeopleUiWords.get("page.nobody"));
        if (everyone.stream().anyMatch(other -> other.secret() != Secret.NONE)) {
            String key = row.secret() == Secret.NONE ? "recover.raise" : "recover.open";
            String verb = PeopleUiWords.get(key, row.person().id());
            context.theme().controls().button(content, verb, () -> recover(row, everyone));
        }
    }

    /** Brings somebody back who forgot their passphrase, or makes them administrator where the last one is lost. */
    void recover(PersonRow who, List<PersonRow> everyone) {
        List<PersonRow> others = everyone.stream()
                .filter(row -> !row.person().id().equals(who.person().id()))
                .toList();
        RecoverForm form = new RecoverForm(context, doors, side, reload);
        context.jobs()
                .run(
                        PeopleUiWords.get("page.reading"),
                        progress -> doors.recovery().sealed(),
                        there -> side.fill(content -> form.fill(content, who, others, open(there))));
    }

    private static Permission open(boolean sealed) {
        return sealed
                ? new Permission.Allowed()
                : new Permission.Denied("recover.none", PeopleUiWords.get("recover.none"));
    }

    /** Who has not signed in does so with the signature. */
    private static Permission proved(Permission may) {
        return may instanceof Permission.Denied denied && denied.code().equals("sign-in.needed")
                ? new Permission.Allowed()
                : may;
    }

    private void form(Act act, Form form) {
        Optional<PersonId> actor = context.actor();
        if (actor.isEmpty()) {
            context.say(PeopleUiWords.get("page.nobody"));
            return;
        }
        context.jobs()
                .run(
                        PeopleUiWords.get("page.reading"),
                        progress -> doors.permissions().ask(actor.get(), act),
                        may -> form.fill(actor.get(), may));
    }
}
