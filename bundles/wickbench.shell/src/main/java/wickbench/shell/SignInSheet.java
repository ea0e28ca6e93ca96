package wickbench.shell;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Meaning;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** Asks one person for their passphrase; Enter signs in, Escape closes, a button helps who forgot it. */
final class SignInSheet {
    private static final char HIDDEN = '\u2022';
    private static final int WIDTH = 460;

    private final Shell sheet;
    private final Theme theme;
    private final Field<Text> passphrase;
    private final Label said;
    private final Button act;

    /**
     * @param tell hears the passphrase and, when it is wrong, tells why in this sheet
     * @param forgotten leads on who forgot it; empty where nothing is installed that could
     */
    SignInSheet(Window window, String name, BiConsumer<Passphrase, SignInSheet> tell, Optional<Runnable> forgotten) {
        theme = window.looks().on(window.shell().getDisplay());
        sheet = Sheet.over(window.shell(), theme, ShellWords.get("sign-in.title"), 1);
        sheet.addListener(SWT.Dispose, event -> theme.dispose());
        theme.controls().label(sheet, Type.HEADING, name);
        passphrase = new Form(sheet, theme).text(ShellWords.get("sign-in.passphrase"));
        passphrase.control().setEchoChar(HIDDEN);
        said = theme.controls().text(sheet, Type.SMALL, ShellWords.get("sign-in.line"));
        Consumer<Passphrase> hear = typed -> tell.accept(typed, this);
        Composite buttons = Fit.right(theme.controls().box(sheet, forgotten.isPresent() ? 2 : 1));
        forgotten.ifPresent(lead -> theme.controls().button(buttons, ShellWords.get("sign-in.forgotten"), () -> {
            close();
            lead.run();
        }));
        act = theme.controls().mainButton(buttons, ShellWords.get("sign-in.act"), () -> press(hear));
        sheet.setDefaultButton(act);
    }

    Shell open(Window window) {
        Sheet.open(sheet, window.shell(), theme.px(WIDTH));
        passphrase.control().setFocus();
        return sheet;
    }

    /** Says why not, and lets one try again. */
    void refuse(String why) {
        if (!sheet.isDisposed()) {
            act.setEnabled(true);
            said.setText(why);
            said.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
            Sheet.fit(sheet);
            passphrase.control().setFocus();
        }
    }

    void close() {
        if (!sheet.isDisposed()) {
            sheet.close();
        }
    }

    private void press(Consumer<Passphrase> hear) {
        act.setEnabled(false);
        Passphrase typed = Passphrase.of(passphrase.control().getTextChars());
        passphrase.control().setText("");
        hear.accept(typed);
    }
}
