package wickbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wickbench.widgets.Badge;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;

/** What is due in the top bar, by keyboard alone. */
class DueItemTest {
    private static final Due LOT = due("HZ-1 ends tomorrow", "stockroom", "HZ-1");
    private static final Due LOCK = due("bo is locked out", "people", "bo");

    private final List<Due> gone = new ArrayList<>();
    private OpenDesk desk;

    @BeforeEach
    void open() {
        Places places = new Places();
        Offer.add(places, "bench", new PlainPage("&Bench"));
        desk = new OpenDesk(places);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aKeyGoesToTheFirstTabToTheNextAndEnterOrSpaceOpens() {
        show(LOT, LOCK);
        focusDue();
        assertThat(word()).isEqualTo("HZ-1 ends tomorrow");
        type(SWT.CR);
        assertThat(gone).containsExactly(LOT);
        type(SWT.TAB);
        assertThat(word()).isEqualTo("bo is locked out");
        type(' ');
        assertThat(gone).containsExactly(LOT, LOCK);
        type(SWT.TAB);
        assertThat(focus()).isSameAs(desk.window().top().person());
    }

    @Test
    void theSameThingsAMinuteLaterKeepTheKeyboardWhereItIs() {
        show(LOT, LOCK);
        focusDue();
        type(SWT.TAB);
        Control held = focus();
        show(LOT, LOCK);
        assertThat(focus()).isSameAs(held);
        show(LOCK);
        assertThat(word()).isEqualTo("bo is locked out");
    }

    @Test
    void whatIsAsUrgentStandsInTheOrderOfItsPagesWhicheverPartAnswersFirst() {
        assertThat(Stream.of(LOT, LOCK).sorted(Due.MOST_URGENT_FIRST)).containsExactly(LOCK, LOT);
        assertThat(Stream.of(LOCK, LOT).sorted(Due.MOST_URGENT_FIRST)).containsExactly(LOCK, LOT);
    }

    @Test
    void whatDoesNotFitWholeIsLeftToAMenu() {
        desk.window().shell().setSize(1024, 700);
        Due[] many = IntStream.rangeClosed(1, 4)
                .mapToObj(number -> due("Lot HZ-10" + number + " goes out of date", "stockroom", "HZ-10" + number))
                .toArray(Due[]::new);
        show(many);
        DueBar bar = desk.window().top().due();
        assertThat(bar.shown()).isBetween(1, 3);
        focusDue();
        assertThat(word()).isEqualTo("Lot HZ-101 goes out of date");
        Rectangle last = focus().getParent().getClientArea();
        assertThat(Stream.of(focus().getParent().getChildren())
                        .filter(Control::getVisible)
                        .map(Control::getBounds))
                .allSatisfy(bounds -> assertThat(last.intersection(bounds)).isEqualTo(bounds));

        Menu rest = bar.menu();
        assertThat(rest.getItems()).hasSize(4 - bar.shown());
        rest.getItem(rest.getItemCount() - 1).notifyListeners(SWT.Selection, new Event());
        assertThat(gone).containsExactly(many[3]);

        desk.window().shell().setSize(1600, 700);
        desk.await(() -> bar.shown() == 4);
    }

    @Test
    void withNothingDueTheKeySaysSo() {
        show();
        Control before = focus();
        focusDue();
        assertThat(desk.window().status().said()).isEqualTo("Nothing is due.");
        assertThat(focus()).isSameAs(before);
    }

    @Test
    void whatIsDueIsAskedOnlyOnceThePageIsThereAndStaysInOtherLooks() {
        AtomicInteger asked = new AtomicInteger();
        Places places = new Places();
        Offer.add(places, "bench", new PlainPage("&Bench"));
        Neighbours neighbours = new Neighbours();
        neighbours.dueSource(() -> {
            asked.incrementAndGet();
            return List.of(LOT);
        });
        desk.close();
        desk = new OpenDesk(places, neighbours);
        desk.await(desk.window()::isUsable);
        assertThat(asked).hasValue(0);
        desk.window().tellDue();
        desk.await(() -> desk.window().top().due().shown() == 1);
        desk.window().look(new Looks(true, desk.window().looks().percent()));
        desk.await(() -> desk.window().top().due().shown() == 1);
        assertThat(asked).hasValue(2);
    }

    @Test
    void whatIsAnAlarmStandsBeforeWhatCanWait() {
        Due reading = new Due(new Mark("Read strip 5 now", Shape.TRIANGLE, Meaning.ALARM), "bench", "clock");
        Due late = new Due(new Mark("8133 results wait", Shape.TRIANGLE, Meaning.CAUTION), "ledger", "");
        Due known = new Due(new Mark("A run is under way", Shape.SQUARE, Meaning.NOTICE), "bench", "clock");
        assertThat(Stream.of(known, late, reading).sorted(Due.MOST_URGENT_FIRST))
                .containsExactly(reading, late, known);
    }

    private void show(Due... items) {
        desk.window().top().due().show(List.of(items), gone::add);
        desk.settle();
    }

    private String word() {
        return ((Badge) focus()).shown().word();
    }

    private Control focus() {
        return display().getFocusControl();
    }

    private void focusDue() {
        post(SWT.KeyDown, (char) 0, SWT.SHIFT);
        post(SWT.KeyDown, (char) 0, SWT.F6);
        post(SWT.KeyUp, (char) 0, SWT.F6);
        up((char) 0, SWT.SHIFT);
    }

    private void type(char letter) {
        post(SWT.KeyDown, letter, letter);
        up(letter, letter);
    }

    /** Lets a key go, and waits until the window has heard it. */
    private void up(char letter, int code) {
        boolean[] heard = {false};
        display().addFilter(SWT.KeyUp, event -> heard[0] |= event.keyCode != SWT.F6);
        post(SWT.KeyUp, letter, code);
        desk.await(() -> heard[0]);
        desk.settle();
    }

    private void post(int what, char letter, int code) {
        Event event = new Event();
        event.type = what;
        event.character = letter;
        event.keyCode = code;
        display().post(event);
    }

    private Display display() {
        return desk.window().shell().getDisplay();
    }

    private static Due due(String word, String page, String argument) {
        return new Due(new Mark(word, Shape.TRIANGLE, Meaning.CAUTION), page, argument);
    }
}
