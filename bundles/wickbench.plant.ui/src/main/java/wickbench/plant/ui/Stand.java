package wickbench.plant.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wickbench.api.authority.Actor;
import wickbench.plant.PlantState;
import wickbench.plant.Stated;
import wickbench.shell.ActForm;
import wickbench.shell.ActForm.Titled;
import wickbench.shell.PageContext;
import wickbench.widgets.Side;
import wickbench.widgets.Work;

/**
 * Where a form stands, and who fills it in.
 *
 * @param may whether the person may state things of the plant; what has happened anybody may record
 * @param leave brings back what stood there before
 * @param done hears, in words, what was done
 */
record Stand(
        PageContext context,
        PlantDoors doors,
        PlantState plant,
        PlantDoors.May may,
        Side side,
        Runnable leave,
        Consumer<String> done) {

    /** Begins a form under a key of the words. */
    void open(String key, Consumer<ActForm> fields, Object... facts) {
        Titled what = new Titled(PlantUiWords.get(key + ".title", facts), PlantUiWords.get(key + ".line", facts));
        side.fill(content -> {
            ActForm form = new ActForm(content, context, PlantUiWords::get, what, side::measure, leave);
            fields.accept(form);
            form.focus();
        });
    }

    <T> Optional<Work<T>> work(Function<Actor, T> act) {
        Actor by = Actor.of(may.actor().orElseThrow());
        return Optional.of(progress -> act.apply(by));
    }

    /** States one thing. */
    Optional<Work<Integer>> state(Stated thing) {
        return work(by -> doors.keeping().state(thing, by));
    }

    <T> Consumer<T> said(String key, Object... facts) {
        return what -> done.accept(PlantUiWords.get(key, facts));
    }
}
