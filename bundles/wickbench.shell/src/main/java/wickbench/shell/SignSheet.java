package wickbench.shell;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.progress.Progress;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/**
 * Asks a person to put their name under something, and does it.
 *
 * <p>It says who signs, what, and what the signature means (21 CFR 11.50), and asks for the passphrase each time. When the act is
 * refused it stays open and says why. What may go unsigned has a second button, which says that it stays so for good; a person
 * without a passphrase has that one only.
 *
 * @param <T> what comes of the act
 */
public final class SignSheet<T> {
    private static final char HIDDEN = '\u2022';
    private static final int WIDTH = 540;

    private final PageContext context;
    private final Asked asked;
    private final Watched<T> acting;
    private final Consumer<T> done;
    private final Shell sheet;
    private final Optional<Field<Text>> reason;
    private final Optional<Field<Text>> passphrase;
    private final Composite buttons;
    private final Label said;

    /**
     * What is asked.
     *
     * @param title what is done, for example {@code Issue milk-rinse, version 2}
     * @param signer name and id of who signs
     * @param meaning what the name under it says, as in "signs to issue a method"
     * @param verb on the button that signs
     * @param reason the label of a field for the reason; empty where none is asked
     * @param keyed whether the person has a passphrase
     */
    public record Asked(
            String title, String signer, String meaning, String verb, Optional<String> reason, boolean keyed) {}

    /**
     * Does what is signed, off the UI thread.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Acting<T> {
        /**
         * Does it.
         *
         * @param passphrase empty when it is done unsigned; wiped afterwards
         * @param reason blank where none is asked
         * @throws Exception what went wrong, told in its own words
         */
        T act(Optional<Passphrase> passphrase, String reason) throws Exception;
    }

    /**
     * Does what is signed, off the UI thread, and tells how far it is.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Watched<T> {
        /**
         * Does it as {@link Acting#act} does.
         *
         * @param progress hears how far it is, in the status line
         * @throws Exception what went wrong, told in its own words
         */
        T act(Optional<Passphrase> passphrase, String reason, Progress progress) throws Exception;
    }

    private SignSheet(PageContext context, Shell window, Asked asked, Watched<T> acting, Consumer<T> done) {
        this.context = context;
        this.asked = asked;
        this.acting = acting;
        this.done = done;
        Theme theme = context.theme();
        sheet = Sheet.over(window, theme, asked.title(), 1);
        theme.controls().text(sheet, Type.HEADING, asked.title());
        String line = asked.keyed() ? "sign.line" : "sign.keyless";
        theme.controls().text(sheet, Type.BODY, ShellWords.get(line, asked.signer(), asked.meaning()));
        Form form = new Form(sheet, theme);
        reason = asked.reason().map(form::text);
        passphrase = asked.keyed() ? Optional.of(form.text(ShellWords.get("sign.passphrase"))) : Optional.empty();
        passphrase.ifPresent(field -> field.control().setEchoChar(HIDDEN));
        Fit.wide(new Note(sheet, theme, Meaning.CAUTION, ShellWords.get("sign.unsigned")));
        said = theme.controls().text(sheet, Type.SMALL, "");
        said.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
        buttons = Fit.right(theme.controls().box(sheet, asked.keyed() ? 3 : 2));
        theme.controls().button(buttons, ShellWords.get("sign.cancel"), sheet::close);
        buttons(theme);
        say("");
    }

    private void buttons(Theme theme) {
        Runnable plain = () -> run(Optional.empty());
        if (passphrase.isEmpty()) {
            sheet.setDefaultButton(theme.controls().mainButton(buttons, ShellWords.get("sign.without"), plain));
            return;
        }
        theme.controls().button(buttons, ShellWords.get("sign.without"), plain);
        Button sign = theme.controls().mainButton(buttons, asked.verb(), () -> run(Optional.of(typed())));
        sheet.setDefaultButton(sign);
    }

    /**
     * Opens it over a page's window; called on the UI thread.
     *
     * @param done hears, on the UI thread, what came of the act once it is done
     */
    public static <T> Shell open(PageContext context, Shell window, Asked asked, Acting<T> acting, Consumer<T> done) {
        return watched(context, window, asked, (passphrase, reason, progress) -> acting.act(passphrase, reason), done);
    }

    /** Opens it as {@link #open} does for an act that takes long. */
    public static <T> Shell watched(
            PageContext context, Shell window, Asked asked, Watched<T> acting, Consumer<T> done) {
        SignSheet<T> opened = new SignSheet<>(context, window, asked, acting, done);
        Sheet.open(opened.sheet, window, context.theme().px(WIDTH));
        opened.reason
                .or(() -> opened.passphrase)
                .ifPresent(field -> field.control().setFocus());
        return opened.sheet;
    }

    private Passphrase typed() {
        Text field = passphrase.orElseThrow().control();
        Passphrase typed = Passphrase.of(field.getTextChars());
        field.setText("");
        return typed;
    }

    private void run(Optional<Passphrase> typed) {
        String why = reason.map(field -> field.control().getText().strip()).orElse("");
        if (reason.isPresent() && why.isEmpty()) {
            typed.ifPresent(Passphrase::close);
            say(ShellWords.get("sign.reason"));
            return;
        }
        buttons.setEnabled(false);
        context.jobs()
                .run(
                        asked.title(),
                        progress -> {
                            try {
                                return acting.act(typed, why, progress);
                            } finally {
                                typed.ifPresent(Passphrase::close);
                            }
                        },
                        this::finish,
                        failure -> refuse(failure.getMessage()));
    }

    private void finish(T result) {
        if (!sheet.isDisposed()) {
            sheet.close();
        }
        done.accept(result);
    }

    private void refuse(String why) {
        if (!sheet.isDisposed()) {
            buttons.setEnabled(true);
            say(why);
            passphrase.ifPresent(field -> field.control().setFocus());
        }
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        ((GridData) said.getLayoutData()).exclude = text.isEmpty();
        if (sheet.isVisible()) {
            Sheet.fit(sheet);
        }
    }
}
