package wickbench.shell;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/** The two menus of the top bar: who acts, and how the desk looks. */
final class WindowMenus {
    private final Window window;
    private final Neighbours neighbours;
    private final Supplies supplies;
    private final Session session;

    WindowMenus(Window window, Supplies supplies) {
        this.window = window;
        this.neighbours = supplies.neighbours();
        this.supplies = supplies;
        this.session = supplies.session();
    }

    /** Reads who is enrolled and lets one choose. */
    void person() {
        Button below = window.top().person();
        if (neighbours.people().isEmpty()) {
            window.say(ShellWords.get("person.no-people"));
            return;
        }
        PageJobs jobs = jobs(below);
        jobs.run(
                ShellWords.get("work.people"),
                progress -> neighbours.people().map(people -> people.all()).orElse(List.of()),
                everyone -> personMenu(below, everyone, new SignInActs(window, supplies, jobs)));
    }

    void view() {
        Button below = window.top().view();
        Menu menu = new Menu(below);
        Looks looks = window.looks();
        radio(menu, ShellWords.get("view.light"), !looks.dark(), () -> window.look(looks.withDark(false)));
        radio(menu, ShellWords.get("view.dark"), looks.dark(), () -> window.look(looks.withDark(true)));
        new MenuItem(menu, SWT.SEPARATOR);
        for (int percent : Looks.SIZES) {
            radio(
                    menu,
                    ShellWords.get("view.size", percent),
                    looks.percent() == percent,
                    () -> window.look(looks.withPercent(percent)));
        }
        new MenuItem(menu, SWT.SEPARATOR);
        supplies.language().ifPresent(kept -> new LanguageMenu(window, kept, jobs(below)).in(menu));
        item(menu, SWT.PUSH, ShellWords.get("view.reset"), window::resetLayout);
        if (window.firstStepsDone() && window.has(StartPage.PLACE)) {
            item(menu, SWT.PUSH, ShellWords.get("view.first"), () -> window.show(StartPage.PLACE, Optional.empty()));
        }
        item(menu, SWT.PUSH, ShellWords.get("view.guide"), window::openGuide);
        item(menu, SWT.PUSH, ShellWords.get("view.keys"), () -> KeysSheet.open(window));
        drop(menu, below);
    }

    private PageJobs jobs(Button below) {
        return new PageJobs(
                below.getDisplay(),
                supplies.workers().pool(),
                () -> !below.isDisposed(),
                new JobBoard(),
                e -> window.say(Failures.plain(e)));
    }

    private void personMenu(Button below, List<Person> everyone, SignInActs acts) {
        Menu menu = new Menu(below);
        Optional<PersonId> actor = session.actor();
        radio(menu, ShellWords.get("person.nobody.item"), actor.isEmpty(), acts::leave);
        new MenuItem(menu, SWT.SEPARATOR);
        for (Person person : everyone) {
            radio(
                    menu,
                    ShellWords.get("person.item", person.display(), person.id()),
                    actor.equals(Optional.of(person.id())),
                    () -> acts.choose(person));
        }
        if (everyone.isEmpty()) {
            item(menu, SWT.PUSH, ShellWords.get("person.none"), () -> {}).setEnabled(false);
        }
        drop(menu, below);
    }

    static void radio(Menu menu, String words, boolean chosen, Runnable act) {
        item(menu, SWT.RADIO, words, act).setSelection(chosen);
    }

    private static MenuItem item(Menu menu, int style, String words, Runnable act) {
        MenuItem item = new MenuItem(menu, style);
        item.setText(words);
        item.addListener(SWT.Selection, event -> {
            if (style != SWT.RADIO || item.getSelection()) {
                // the act may make the whole window anew, which the menu must not see while it is still open
                menu.getDisplay().asyncExec(act);
            }
        });
        return item;
    }

    private static void drop(Menu menu, Button below) {
        menu.setLocation(below.toDisplay(0, below.getSize().y));
        menu.addListener(SWT.Hide, event -> menu.getDisplay().asyncExec(menu::dispose));
        menu.setVisible(true);
    }
}
