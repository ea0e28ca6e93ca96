package wickbench.shell;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;

/** What the keys of the window do in it. */
record WindowKeys(Window window) implements Keys.Acts {

    @Override
    public void goTo(int number) {
        List<Place> places = window.places();
        if (number <= places.size()) {
            window.show(places.get(number - 1).id(), Optional.empty());
        }
    }

    @Override
    public boolean goTo(char letter) {
        Optional<Place> place = window.places().stream()
                .filter(candidate -> candidate.letter().equals(Optional.of(Character.toLowerCase(letter))))
                .findFirst();
        place.ifPresent(there -> window.show(there.id(), Optional.empty()));
        return place.isPresent();
    }

    @Override
    public void resize(int steps) {
        look(window.looks().larger(steps));
    }

    @Override
    public void resizeBack() {
        look(window.looks().withPercent(Looks.FIRST.percent()));
    }

    @Override
    public void otherLight() {
        look(window.looks().withDark(!window.looks().dark()));
    }

    @Override
    public void showKeys() {
        KeysSheet.open(window);
    }

    @Override
    public void openGuide() {
        window.openGuide();
    }

    @Override
    public void focusRail() {
        window.rail().focus();
    }

    @Override
    public void focusDue() {
        if (!window.top().due().focus()) {
            window.say(ShellWords.get("due.none"));
        }
    }

    @Override
    public void focusAlarm() {
        if (!window.focusAlarm()) {
            window.say(ShellWords.get("alarm.none"));
        }
    }

    @Override
    public void cancelWork() {
        window.status().cancel();
    }

    @Override
    public void choosePerson() {
        press(window.top().person());
    }

    @Override
    public void chooseView() {
        press(window.top().view());
    }

    private static void press(Button button) {
        button.getDisplay().asyncExec(() -> {
            if (!button.isDisposed()) {
                button.setFocus();
                button.notifyListeners(SWT.Selection, new Event());
            }
        });
    }

    /** The control that had the key is thrown away by new looks, so they wait until it is done with the key. */
    private void look(Looks next) {
        window.shell().getDisplay().asyncExec(() -> window.look(next));
    }
}
