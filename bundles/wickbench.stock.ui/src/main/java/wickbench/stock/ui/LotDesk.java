package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.stock.Due;
import wickbench.stock.Fridge;
import wickbench.stock.Happening;
import wickbench.stock.Kit;
import wickbench.stock.Lot;
import wickbench.stock.Stockroom.Unreceived;

/** What the tab of the lots shows; read off the UI thread. */
record LotDesk(StockDoors doors) {
    private static final int DUE_DAYS = 30;

    /**
     * What is known when the tab opens.
     *
     * @param inserts by which revisions of its insert the methods of a kit are written
     */
    record Known(
            List<Kit> kits,
            Map<String, List<String>> inserts,
            List<String> fridges,
            List<Due> due,
            List<Unreceived> unreceived,
            Rights rights,
            LocalDate today,
            SiteTimes times,
            boolean any) {}

    /**
     * One lot in full.
     *
     * @param clashing what stations decided differently and nobody has settled
     */
    record Shown(Lot lot, List<Happening> history, List<EntryRef> clashing, List<Due> due, int results, Known known) {
        boolean differs() {
            return !clashing.isEmpty();
        }
    }

    Known known(Optional<PersonId> actor) {
        SiteTimes times = new SiteTimes(doors.room().zone());
        var now = doors.clock().instant();
        List<Kit> kits = doors.room().kits();
        return new Known(
                kits,
                kits.stream().map(Kit::name).collect(Collectors.toMap(name -> name, doors.room()::inserts)),
                doors.fridges().all().stream().map(Fridge::id).toList(),
                doors.room().due(now, DUE_DAYS),
                doors.room().unreceived(),
                doors.rights(actor),
                times.day(now),
                times,
                !doors.room().lots(now).isEmpty());
    }

    /** Returns lots first expired first; those that nobody keeps any more only if asked for. */
    List<Lot> lots(boolean all) {
        return doors.room().lots(doors.clock().instant()).stream()
                .filter(lot -> all || lot.state().kept())
                .toList();
    }

    Optional<Shown> find(LotId id, Known known) {
        return doors.room()
                .lot(id, doors.clock().instant())
                .map(lot -> new Shown(
                        lot,
                        doors.room().history(id),
                        doors.room().clashing(id),
                        known.due().stream()
                                .filter(due -> due.subject().equals(id.value()))
                                .toList(),
                        doors.room().trace(id).uses().size(),
                        known));
    }
}
