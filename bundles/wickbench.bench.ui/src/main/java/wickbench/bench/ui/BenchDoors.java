package wickbench.bench.ui;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.lot.Lots;
import wickbench.api.method.Methods;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.person.PersonId;
import wickbench.api.planned.PlannedTests;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.RunSheets;
import wickbench.bench.run.Runs;

/**
 * The ports through which the page works.
 *
 * @param runs the runs of this station
 * @param owed what is owed at this site
 * @param advice what speaks against a start
 * @param lots at most one; none where no stock is kept
 * @param planned who knows the samples of what is due; none where no programme is kept
 * @param photos what waits to be attached
 */
record BenchDoors(
        Home home,
        Journal journal,
        Index index,
        Methods methods,
        ReadingDoor door,
        RunSheets sheets,
        Runs runs,
        OwedWork owed,
        RunAdvice advice,
        Persons persons,
        List<Lots> lots,
        Attachments attachments,
        List<PlannedTests> planned,
        PhotoTray photos) {

    /** Who is there, and what the site has decided. */
    record Persons(People people, SignIn signIn, SiteProfile profile, SiteFacts site) {}

    /** Reads the site's zone; not on the UI thread. */
    ZoneId zone() {
        return persons.site().now().zone();
    }

    /** Names who typed an id or scanned a badge; not on the UI thread. */
    PersonId named(String idOrBadge, Optional<Passphrase> pin) {
        return persons.signIn().atBench(idOrBadge, pin);
    }
}
