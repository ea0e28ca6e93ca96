package wickbench.plant.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Room;
import wickbench.widgets.Side;

/**
 * One tab of the page: read off the UI thread, made when there is something to show, and shown anew with every news.
 *
 * @param <K> what is known of it at a time
 */
abstract class PlantRoom<K extends PlantRoom.Known> implements Room {
    private static final int DISPUTES = 2;

    final PageContext context;
    final PlantDoors doors;
    final Composite room;
    private final String doing;
    private Optional<Composite> notes = Optional.empty();
    private Optional<K> known = Optional.empty();
    private boolean asking;

    /** What every tab knows. */
    interface Known {
        PlantState plant();

        /** Whether the person at the desk may state things of the plant. */
        PlantDoors.May may();
    }

    /** @param doing the key of what is done while it is read */
    PlantRoom(Composite parent, PageContext context, PlantDoors doors, String doing) {
        this.context = context;
        this.doors = doors;
        this.doing = doing;
        room = context.theme().controls().box(parent, 1);
    }

    /** Reads what is shown; not on the UI thread. */
    abstract K read(Optional<PersonId> actor);

    /** Makes the controls, once there are lines. */
    abstract void fill(K now);

    /** Shows what is known now. */
    abstract void take(K now);

    @Override
    public final Composite control() {
        return room;
    }

    @Override
    public final void reload() {
        Optional<PersonId> actor = context.actor();
        context.jobs().run(PlantUiWords.get(doing), progress -> read(actor), this::came);
    }

    private void came(K now) {
        known = Optional.of(now);
        if (notes.isEmpty()) {
            clear(room);
            if (now.plant().lines().isEmpty()) {
                Nothing.yet(room, context, "empty");
                room.layout(true, true);
                context.ready();
                return;
            }
            notes = Optional.of(Fit.wide(context.theme().controls().box(room, 1)));
            fill(now);
        }
        disputes(now.plant());
        take(now);
        room.layout(true, true);
    }

    /** Returns what was known last. */
    Optional<K> known() {
        return known;
    }

    /** Says above everything what stations stated differently. */
    private void disputes(PlantState plant) {
        Composite above = notes.orElseThrow();
        clear(above);
        plant.disputes().subjects().stream()
                .sorted()
                .limit(DISPUTES)
                .forEach(subject -> Fit.wide(
                        new Note(above, context.theme(), Meaning.ALARM, PlantUiWords.get("disputed", subject))));
        boolean none = plant.disputes().subjects().isEmpty();
        ((GridData) above.getLayoutData()).exclude = none;
        above.setVisible(!none);
    }

    /** Puts a form in the place of what is shown beside; what comes anew leaves it alone. */
    void ask(Side side, Consumer<Stand> form, Runnable back) {
        K now = known.orElseThrow();
        asking = true;
        form.accept(new Stand(
                context,
                doors,
                now.plant(),
                now.may(),
                side,
                () -> {
                    asking = false;
                    back.run();
                },
                said -> {
                    asking = false;
                    context.say(said);
                    reload();
                }));
    }

    /** Tells whether a form stands where else the chosen thing is shown. */
    boolean asking() {
        return asking;
    }

    /** Shows something else than the form that stands there. */
    void shown() {
        asking = false;
    }

    /** Makes two halves beside one another. */
    SashForm halves() {
        SashForm sash = Fit.grow(new SashForm(room, SWT.HORIZONTAL));
        sash.setBackground(room.getBackground());
        sash.setSashWidth(context.theme().metrics().grid(1));
        return sash;
    }

    static void clear(Composite some) {
        for (Control child : some.getChildren()) {
            child.dispose();
        }
    }
}
