package wickbench.people.ui;

import java.util.Optional;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Permission;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** Makes the recovery code that is kept sealed, and shows it once. */
final class Envelope {
    private final PeopleDoors doors;
    private final PageContext context;

    Envelope(PeopleDoors doors, PageContext context) {
        this.doors = doors;
        this.context = context;
    }

    /** Asks for the signature under it. */
    void fill(
            Composite parent,
            PersonId actor,
            Permission may,
            Runnable grown,
            java.util.function.Consumer<String> made) {
        Section section = new Section(parent, context, "envelope", grown).main();
        var mine = section.secret("mine");
        String[] code = {""};
        section.act(
                "envelope.act",
                may,
                () -> {
                    Signing by = new Signing(actor, Section.take(mine));
                    return Optional.of(progress -> code[0] = doors.recovery().seal(by));
                },
                () -> made.accept(code[0]));
        mine.control().setFocus();
    }

    private void copy(String code) {
        Clipboard clipboard = new Clipboard(context.theme().display());
        clipboard.setContents(new Object[] {code}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        context.say(PeopleUiWords.get("envelope.copied"));
    }

    /** Shows a code that was just made. */
    void show(Composite parent, String code, Runnable written) {
        Composite card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.HEADING, PeopleUiWords.get("envelope.made"));
        context.theme().controls().label(card, Type.MONO, code);
        context.theme().controls().button(card, PeopleUiWords.get("envelope.copy"), () -> copy(code));
        Fit.wide(new Note(card, context.theme(), Meaning.CAUTION, PeopleUiWords.get("envelope.keep")));
        context.theme().controls().mainButton(card, PeopleUiWords.get("envelope.written"), written);
    }
}
