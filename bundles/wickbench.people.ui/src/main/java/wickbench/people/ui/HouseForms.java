package wickbench.people.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;

/** What can be done about the house as a whole: enrol one more, and seal a recovery code. */
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
