package wickbench.bench.ui;

import java.time.ZoneId;
import java.util.List;
import wickbench.api.home.Home;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.method.Methods;
import wickbench.api.person.People;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RunSheets;

/**
 * The ports through which the page works.
 *
 * @param people one, or none where people are not kept
 */
record BenchDoors(
        Home home, Journal journal, Methods methods, ReadingDoor door, RunSheets sheets, List<People> people) {
    /** Reads the site's zone; not on the UI thread. */
    ZoneId zone() {
        return journal.founding().map(Founding::zone).orElseGet(ZoneId::systemDefault);
    }
}
