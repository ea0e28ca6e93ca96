package wickbench.shell;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import wickbench.api.words.KeptLanguage;
import wickbench.api.words.Language;

/** The part of the view menu that chooses the language of the next start. */
final class LanguageMenu {
    private final Window window;
    private final KeptLanguage kept;
    private final PageJobs jobs;

    LanguageMenu(Window window, KeptLanguage kept, PageJobs jobs) {
        this.window = window;
        this.kept = kept;
        this.jobs = jobs;
    }

    /** Reads what was chosen and lets one choose, below a menu that is about to open. */
    void in(Menu above) {
        MenuItem language = new MenuItem(above, SWT.CASCADE);
        language.setText(ShellWords.get("view.language"));
        Menu menu = new Menu(above);
        language.setMenu(menu);
        Optional<Language> chosen = kept.read();
        WindowMenus.radio(
                menu, ShellWords.get("view.language.machine"), chosen.isEmpty(), () -> keep(Optional.empty()));
        for (Language each : Language.installed()) {
            WindowMenus.radio(menu, each.ownName(), chosen.equals(Optional.of(each)), () -> keep(Optional.of(each)));
        }
    }

    private void keep(Optional<Language> language) {
        jobs.run(
                ShellWords.get("work.language"),
                progress -> {
                    kept.write(language);
                    return language;
                },
                done -> window.say(done.map(Language::fromNextStart)
                        .orElseGet(() -> ShellWords.get("view.language.machine-next"))));
    }
}
