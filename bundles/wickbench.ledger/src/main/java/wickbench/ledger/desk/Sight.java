package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationState;
import wickbench.api.journal.Stations;
import wickbench.ledger.Results;
import wickbench.ledger.Unread;
import wickbench.ledger.acts.No;

/** What of the site's entries this station cannot have seen. */
record Sight(Stations stations, Results results) {

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
        }
        for (Unread unread : results.unread()) {
            lacking.add(new No("release.unread", ActsWords.get("unread", unread.entries(), unread.kind(), unread.v())));
        }
        return lacking;
    }

    private static void trouble(StationState station, List<No> lacking) {
        station.trouble()
                .ifPresent(why -> lacking.add(new No(
                        "release.station",
                        ActsWords.get("station", station.station().value(), why))));
    }
}
