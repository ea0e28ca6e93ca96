package wickbench.stock.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Permission;
import wickbench.api.lot.LotId;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;
import wickbench.stock.Lot;
import wickbench.stock.Stockkeeping;
import wickbench.widgets.Work;

/**
 * By whom, and how, a form does something with a lot: off the UI thread, under a name, signed where that is asked.
 *
 * @param done hears, in words, what was done
 */
record LotHands(PageContext context, StockDoors doors, Rights rights, Shell window, Consumer<String> done) {

    Stockkeeping keeping() {
        return doors.keeping();
    }

    Permission may(Act act) {
        return rights.may(act);
    }

    <T> Optional<Work<T>> work(Function<Actor, T> act) {
        Actor by = rights.by();
        return Optional.of(progress -> act.apply(by));
    }

    Consumer<Lot> said(String key) {
        return lot -> done.accept(StockUiWords.get(key + ".done", lot.id()));
    }

    /** Asks for a signature first. */
    void sign(String key, LotId lot, Function<Actor, Lot> deed) {
        var who = rights.actor().orElseThrow();
        SignSheet.<Lot>open(
                context,
                window,
                new Asked(
                        StockUiWords.get(key + ".sheet", lot),
                        rights.who(who),
                        StockUiWords.get(key + ".meaning"),
                        StockUiWords.get(key + ".verb"),
                        Optional.empty(),
                        rights.keyed()),
                (passphrase, reason) -> deed.apply(new Actor(who, passphrase)),
                said(key));
    }
}
