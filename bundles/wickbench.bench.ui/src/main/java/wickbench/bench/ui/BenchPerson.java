package wickbench.bench.ui;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;

/**
 * Names a person by what was typed or scanned into a field: a badge, or a short id with a PIN where one is set.
 *
 * <p>Who has signed in at the top with a passphrase needs neither. It names who did something; it opens nothing.
 */
final class BenchPerson {
    private final PageContext context;
    private final BenchDoors doors;
    private final EntryForm form;
    private final Item item;
    private final Runnable changed;
    private Optional<PersonId> named = Optional.empty();
    private String words = "";
    private String asked = "";

    BenchPerson(PageContext context, BenchDoors doors, EntryForm form, Item item, Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.form = form;
        this.item = item;
        this.changed = changed;
        form.control(item).addListener(SWT.FocusOut, event -> ask());
        context.onActor(actor -> signedIn());
        signedIn();
    }

    private void signedIn() {
        context.actor().filter(actor -> typed().isEmpty()).ifPresent(actor -> form.put(item, actor.value()));
    }

    /** Returns who stands in the field, once they have been named. */
    Optional<PersonId> named() {
        return context.actor()
                .filter(actor -> actor.value().equals(typed()))
                .or(() -> named.filter(person -> person.value().equals(typed())));
    }

    /** Says what is still needed of the person. */
    String words() {
        return words.isEmpty() ? FlowWords.get("person.show") : words;
    }

    /** Takes Enter as the end of a badge, if the focus is in the field and nobody was named yet. */
    boolean takeEnter() {
        Control control = form.control(item);
        boolean here = control.isFocusControl() && named().isEmpty() && !typed().isEmpty();
        if (here) {
            asked = "";
            ask();
        }
        return here;
    }

    private String typed() {
        return form.text(item).strip().toLowerCase(Locale.ROOT);
    }

    private void ask() {
        String badge = form.text(item).strip();
        if (badge.isEmpty() || named().isPresent() || badge.equals(asked)) {
            return;
        }
        asked = badge;
        ask(badge, Optional.empty());
    }

    private void ask(String badge, Optional<Passphrase> pin) {
        context.jobs()
                .run(
                        FlowWords.get("person.asking"),
                        progress -> doors.named(badge, pin),
                        this::take,
                        failure -> refused(badge, failure));
    }

    private void take(PersonId person) {
        named = Optional.of(person);
        words = "";
        form.put(item, person.value());
        changed.run();
    }

    private void refused(String badge, Exception failure) {
        words = failure.getMessage();
        if (failure instanceof Refusal refusal && refusal.code().equals("sign-in.pin")) {
            new PinSheet(form.control(item).getShell(), context.theme(), badge)
                    .ask()
                    .ifPresent(pin -> ask(badge, Optional.of(pin)));
        }
        changed.run();
    }
}
