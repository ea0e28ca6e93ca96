package wickbench.widgets;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.words.Coded;

/**
 * The rooms of a page behind its tabs; each is made when its tab is first chosen.
 *
 * @param <T> the tabs
 */
public final class TabStack<T extends Enum<T> & Coded> {
    private final T[] all;
    private final TabBar bar;
    private final Composite body;
    private final StackLayout stack = new StackLayout();
    private final Map<T, Room> rooms;
    private final BiFunction<T, Composite, Room> make;

    /**
     * Makes the row of tabs and the place below it, and opens the first.
     *
     * @param words of a tab
     * @param make makes the room of a tab
     */
    public TabStack(
            Composite page,
            Theme theme,
            Class<T> tabs,
            Function<T, String> words,
            BiFunction<T, Composite, Room> make) {
        this.make = make;
        all = tabs.getEnumConstants();
        rooms = new EnumMap<>(tabs);
        bar = new TabBar(page, theme, Arrays.stream(all).map(words).toList(), tab -> open(all[tab]));
        body = Fit.grow(theme.controls().box(page, 1));
        body.setLayout(stack);
        open(all[0]);
    }

    /** Brings a room to the front; one that was there before reads anew. */
    public Room open(T tab) {
        bar.show(tab.ordinal());
        boolean held = Focus.within(body);
        boolean old = rooms.containsKey(tab);
        Room room = rooms.computeIfAbsent(tab, made -> make.apply(made, body));
        stack.topControl = room.control();
        body.layout(true, true);
        if (held) {
            // what is hidden keeps no focus, and without any, keys go nowhere
            bar.setFocus();
        }
        if (old) {
            room.reload();
        }
        return room;
    }

    /** Opens what words name, a tab by its code or a thing in it as {@code fridges:F1}; returns whether there is such a tab. */
    public boolean show(String argument) {
        int colon = argument.indexOf(':');
        String code = colon < 0 ? argument : argument.substring(0, colon);
        Optional<T> tab =
                Arrays.stream(all).filter(each -> each.code().equals(code)).findFirst();
        tab.map(this::open).filter(room -> colon > 0).ifPresent(room -> room.show(argument.substring(colon + 1)));
        return tab.isPresent();
    }

    public T shown() {
        return all[bar.shown()];
    }

    public Room front() {
        return rooms.get(shown());
    }

    /** Lets every room that was opened read anew, as when somebody else sits down. */
    public void reload() {
        rooms.values().forEach(Room::reload);
    }
}
