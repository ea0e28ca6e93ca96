package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Sighting;
import wickbench.api.journal.StationState;
import wickbench.api.journal.Stations;
import wickbench.ledger.Results;
import wickbench.ledger.Unread;
import wickbench.ledger.acts.No;

/** What of the site's entries this station cannot have seen. */
record Sight(Stations stations, Journal journal, Index index, Results results) {
    private static final String STATION = "release.station";

    /** Exchanges with the other stations, and returns why their entries may still be missing. */
    List<No> lacking() {
        List<No> lacking = new ArrayList<>();
        Sharing sharing = stations.sharing();
        if (sharing.share().isPresent()) {
            Sharing now = stations.exchange();
            now.cutOff()
                    .ifPresentOrElse(
                            since -> lacking.add(new No("release.cut-off", ActsWords.get("cut-off", since))),
                            () -> now.notices().forEach(notice -> lacking.add(new No("release.stations", notice))));
            now.stations().forEach(station -> trouble(station, lacking));
            now.waits().forEach(wait -> lacking.add(new No(STATION, wait)));
            index.sightings().forEach(sighting -> unseen(sighting, lacking));
        }
        for (Unread unread : results.unread()) {
            lacking.add(new No("release.unread", ActsWords.get("unread", unread.entries(), unread.kind(), unread.v())));
        }
        return lacking;
    }

    private static void trouble(StationState station, List<No> lacking) {
        station.trouble()
                .ifPresent(why -> lacking.add(new No(
                        STATION, ActsWords.get("station", station.station().value(), why))));
    }

    /** What another station had seen of a third, or of this one, exists, whatever the shared folder shows by now. */
    private void unseen(Sighting sighting, List<No> lacking) {
        long here = journal.size(sighting.other());
        if (sighting.size() > here) {
            lacking.add(new No(
                    STATION, ActsWords.get("unseen", sighting.station(), sighting.size(), sighting.other(), here)));
        }
    }
}
