package wickbench.shell;

import java.util.List;
import java.util.Optional;

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
                .filter(candidate -> mark(candidate.page().title()) == Character.toLowerCase(letter))
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

    /** The control that had the key is thrown away by new looks, so they wait until it is done with the key. */
    private void look(Looks next) {
        window.shell().getDisplay().asyncExec(() -> window.look(next));
    }

    private static char mark(String title) {
        int at = title.indexOf('&');
        return at >= 0 && at + 1 < title.length() ? Character.toLowerCase(title.charAt(at + 1)) : 0;
    }
}
