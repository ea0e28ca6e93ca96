package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import wickbench.api.person.PersonId;
import wickbench.widgets.StripDrawing;

class WindowTest {

    @Test
    void opensAPageWhenItIsFirstShownAndNotBefore() {
        PlainPage bench = new PlainPage("&Bench");
        PlainPage ledger = new PlainPage("&Ledger");
        try (OpenDesk desk = new OpenDesk(places(bench, ledger))) {
            assertThat(bench.heard()).containsExactly("open", "shown");
            assertThat(ledger.heard()).isEmpty();
            desk.show("ledger", Optional.of("r-7"));
            desk.show("bench", Optional.empty());
            desk.show("ledger", Optional.of("r-8"));
            assertThat(ledger.heard()).containsExactly("open", "show r-7", "shown", "show r-8", "shown");
            assertThat(bench.heard()).containsExactly("open", "shown", "shown");
        }
    }

    @Test
    void goesToPlacesByDigitAndByLetter() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            desk.press('2', SWT.CTRL);
            assertThat(desk.front().id()).isEqualTo("ledger");
            desk.press('b', SWT.ALT);
            assertThat(desk.front().id())
                    .as("a letter with Alt alone is a button's")
                    .isEqualTo("ledger");
            desk.press('b', SWT.ALT | SWT.SHIFT);
            assertThat(desk.front().id()).isEqualTo("bench");
            desk.press('9', SWT.CTRL);
            assertThat(desk.front().id()).isEqualTo("bench");
        }
    }

    @Test
    void walksTheRailWithArrowKeys() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            desk.press(SWT.F6, SWT.NONE);
            desk.press(SWT.ARROW_DOWN, SWT.NONE);
            desk.press(SWT.CR, SWT.NONE);
            assertThat(desk.front().id()).isEqualTo("ledger");
        }
    }

    @Test
    void followsPagesThatComeAndGo() {
        PlainPage bench = new PlainPage("&Bench");
        PlainPage ledger = new PlainPage("&Ledger");
        Places places = places(bench, ledger);
        try (OpenDesk desk = new OpenDesk(places)) {
            places.remove(new Offer(bench));
            desk.settle();
            assertThat(bench.heard()).endsWith("closed");
            assertThat(desk.front().id()).isEqualTo("ledger");
            places.remove(new Offer(ledger));
            desk.settle();
            assertThat(desk.window().front()).isEmpty();
            assertThat(words(desk)).contains(ShellWords.get("no-pages.title"));
            Offer.add(places, "bench", bench);
            desk.settle();
            assertThat(desk.front().id()).isEqualTo("bench");
        }
    }

    @Test
    void keepsThePageInFrontWhenItsLooksChange() {
        PlainPage ledger = new PlainPage("&Ledger");
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), ledger))) {
            desk.window().show("ledger", Optional.empty());
            desk.press('d', SWT.CTRL | SWT.SHIFT);
            assertThat(desk.window().looks().dark()).isTrue();
            assertThat(desk.front().id()).isEqualTo("ledger");
            desk.press('+', SWT.CTRL);
            assertThat(desk.window().looks().percent()).isEqualTo(125);
            assertThat(desk.front().theme().px(8)).isEqualTo(10);
            desk.press('0', SWT.CTRL);
            assertThat(desk.window().looks().percent()).isEqualTo(100);
            assertThat(ledger.heard()).filteredOn("closed"::equals).hasSize(3);
        }
    }

    @Test
    void carriesWhatWasTypedOverToNewLooksAlsoOfPagesBehind() {
        PlainPage bench = new PlainPage("&Bench", (label, context) -> label.setText("half a form"));
        PlainPage ledger = new PlainPage("&Ledger");
        try (OpenDesk desk = new OpenDesk(places(bench, ledger))) {
            desk.show("ledger", Optional.empty());
            desk.window().look(Looks.FIRST.withDark(true));
            desk.window().look(Looks.FIRST);
            desk.settle();
            assertThat(bench.heard()).containsExactly("open", "shown", "closed");
            desk.show("bench", Optional.empty());
            assertThat(bench.heard()).endsWith("closed", "open", "restore half a form", "shown");
        }
    }

    @Test
    void doesNotCutOffWorkForNewLooks() {
        CountDownLatch go = new CountDownLatch(1);
        PlainPage bench = new PlainPage(
                "&Bench",
                (label, context) -> context.jobs()
                        .run(
                                "work",
                                progress -> go.await(10, TimeUnit.SECONDS),
                                done -> label.setText("done " + done)));
        try (OpenDesk desk = new OpenDesk(places(bench, new PlainPage("&Ledger")))) {
            desk.window().look(Looks.FIRST.withDark(true));
            assertThat(desk.window().looks()).isEqualTo(Looks.FIRST);
            assertThat(desk.window().status().said()).contains("still under way");
            go.countDown();
            desk.await(() -> words(desk).contains("done true"));
            desk.window().look(Looks.FIRST.withDark(true));
            assertThat(desk.window().looks().dark()).isTrue();
        }
    }

    @Test
    void keepsTheFocusInThePageWhenItsLooksChange() {
        try (OpenDesk desk = new OpenDesk(SampleDesk.places())) {
            desk.await(() -> desk.front().settled());
            desk.window().look(Looks.FIRST.withDark(true));
            desk.settle();
            Control focus = desk.window().shell().getDisplay().getFocusControl();
            assertThat(focus).isNotNull();
            while (focus.getParent() != null && focus != desk.front().box()) {
                focus = focus.getParent();
            }
            assertThat(focus).isSameAs(desk.front().box());
        }
    }

    @Test
    void leadsTheFocusToWhatComesLateUnlessSomebodyHasMovedIt() {
        LatePage left = new LatePage();
        try (OpenDesk desk = new OpenDesk(places(left, new PlainPage("&Ledger")))) {
            assertThat(left.first().isFocusControl()).isTrue();
            left.load();
            desk.await(() -> desk.front().settled());
            assertThat(left.field().isFocusControl()).isTrue();
        }
        LatePage moved = new LatePage();
        try (OpenDesk desk = new OpenDesk(places(moved, new PlainPage("&Ledger")))) {
            moved.second().setFocus();
            moved.load();
            desk.await(() -> desk.front().settled());
            assertThat(moved.second().isFocusControl()).isTrue();
        }
    }

    @Test
    void alwaysShowsTheCaution() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            assertThat(words(desk)).anyMatch(text -> text.contains("never “free of”") && text.contains("govern"));
        }
    }

    @Test
    void tellsPagesWhoActs() {
        Label[] said = {null};
        PlainPage bench = new PlainPage("&Bench", (label, context) -> {
            said[0] = label;
            context.onActor(actor -> label.setText(actor.map(PersonId::value).orElse("nobody")));
        });
        try (OpenDesk desk = new OpenDesk(places(bench, new PlainPage("&Ledger")))) {
            desk.session().actor(Optional.of(new PersonId("op3")));
            assertThat(said[0].getText()).isEqualTo("op3");
            desk.window().look(Looks.FIRST.withDark(true));
            desk.session().actor(Optional.empty());
            assertThat(said[0].getText()).isEqualTo("nobody");
        }
    }

    @Test
    void showsWhatBrokeAndWorksOn() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            desk.window().shell().getDisplay().asyncExec(() -> {
                throw new IllegalStateException("torn");
            });
            desk.settle();
            assertThat(words(desk)).anyMatch(text -> text.contains("IllegalStateException: torn"));
            desk.press('2', SWT.CTRL);
            assertThat(desk.front().id()).isEqualTo("ledger");
        }
    }

    @Test
    void opensTheSheetOfKeysWithF1() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            desk.press(SWT.F1, SWT.NONE);
            assertThat(desk.window().shell().getShells())
                    .extracting(Shell::getText)
                    .containsExactly("Keys");
        }
    }

    @Test
    void itsSheetOfKeysTellsThoseOfThePageInFront() {
        PlainPage bench = new PlainPage("&Bench", (label, context) -> {
            context.theme().controls().button(label.getParent(), "&Plan F5", () -> {});
            context.theme().controls().button(label.getParent(), "Sa&ve \u2026", () -> {});
            context.theme().controls().button(label.getParent(), "No letter", () -> {});
        });
        try (OpenDesk desk = new OpenDesk(places(bench, new PlainPage("&Ledger")))) {
            assertThat(desk.front().keys())
                    .containsExactly(new KeyHint("Alt+P  F5", "Plan"), new KeyHint("Alt+V", "Save \u2026"));
        }
    }

    @Test
    void leavesTheKeysOfASheetToTheSheet() {
        try (OpenDesk desk = new OpenDesk(places(new PlainPage("&Bench"), new PlainPage("&Ledger")))) {
            Shell sheet = KeysSheet.open(desk.window());
            Event event = new Event();
            event.keyCode = '2';
            event.character = '2';
            event.stateMask = SWT.CTRL;
            sheet.notifyListeners(SWT.KeyDown, event);
            desk.settle();
            assertThat(desk.front().id()).isEqualTo("bench");
        }
    }

    @Test
    void theRailIsOneStopOfTheTabKey() {
        try (OpenDesk desk = new OpenDesk(SampleDesk.places())) {
            desk.await(() -> desk.front().settled());
            desk.press(SWT.F6, SWT.NONE);
            desk.press(SWT.ARROW_DOWN, SWT.NONE);
            Control item = desk.window().shell().getDisplay().getFocusControl();
            assertThat(item).isInstanceOf(RailItem.class);
            item.traverse(SWT.TRAVERSE_TAB_NEXT);
            desk.settle();
            assertThat(desk.window().shell().getDisplay().getFocusControl())
                    .isNotNull()
                    .isNotInstanceOf(RailItem.class);
        }
    }

    @Test
    void letsTheTabKeyReachEverythingThatCanBeUsed() {
        try (OpenDesk desk = new OpenDesk(SampleDesk.places())) {
            desk.await(() -> desk.front().settled());
            Set<Control> reached = new LinkedHashSet<>();
            Control focus = desk.window().shell().getDisplay().getFocusControl();
            for (int i = 0; i < 60 && reached.add(focus); i++) {
                focus.traverse(SWT.TRAVERSE_TAB_NEXT);
                desk.settle();
                focus = desk.window().shell().getDisplay().getFocusControl();
            }
            assertThat(reached).hasAtLeastOneElementOfType(Table.class);
            assertThat(reached).hasAtLeastOneElementOfType(StripDrawing.class);
            assertThat(reached).hasAtLeastOneElementOfType(RailItem.class);
            assertThat(reached).filteredOn(Text.class::isInstance).hasSize(3);
            assertThat(reached)
                    .filteredOn(Button.class::isInstance)
                    .extracting(button -> ((Button) button).getText())
                    .contains("&Export", "&New run", "Table ▾", "View ▾", "Nobody signed in ▾");
        }
    }

    private static Places places(Page bench, Page ledger) {
        Places places = new Places();
        Offer.add(places, "ledger", 20, ledger);
        Offer.add(places, "bench", 10, bench);
        return places;
    }

    private static Set<String> words(OpenDesk desk) {
        Set<String> words = new LinkedHashSet<>();
        collect(desk.window().shell(), words);
        return words;
    }

    private static void collect(Composite parent, Set<String> words) {
        for (Control child : parent.getChildren()) {
            if (child instanceof Label label && label.isVisible()) {
                words.add(label.getText());
            }
            if (child instanceof Composite composite) {
                collect(composite, words);
            }
        }
    }
}
