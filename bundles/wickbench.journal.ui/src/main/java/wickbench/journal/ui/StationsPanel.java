package wickbench.journal.ui;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.journal.Founding;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Sighting;
import wickbench.api.journal.StationId;
import wickbench.api.journal.StationState;
import wickbench.api.words.Decimals;
import wickbench.shell.PageContext;
import wickbench.widgets.Facts;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** The other stations of the site: what is here of each, what clashes, and the folder between them. */
final class StationsPanel {
    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private DateTimeFormatter times = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM);

    StationsPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "stations", grown);
    }

    /** @param done told when the folder was set or something was exchanged */
    void fill(JournalDoors.Known known, Runnable done) {
        times = times(known);
        known.sharing().notices().forEach(text -> note(Meaning.ALARM, text));
        known.sharing().waits().forEach(text -> note(Meaning.CAUTION, text));
        facts(known);
        Field<Text> folder = panel.form().text(JournalUiWords.get("stations.folder"));
        folder.control().setText(known.sharing().share().map(Path::toString).orElse(""));
        panel.chooser("stations.choose", folder);
        Button share = panel.button("stations.share", () -> share(folder, done));
        share.setEnabled(known.status().isPresent());
        if (known.sharing().share().isPresent()) {
            panel.button("stations.exchange", () -> exchange(done));
            panel.button("stations.alone", () -> share(Optional.empty(), done));
        }
    }

    private void note(Meaning meaning, String text) {
        Fit.wide(new Note(panel.content(), context.theme(), meaning, text));
    }

    /** Returns times of the site's zone. */
    static DateTimeFormatter times(JournalDoors.Known known) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM)
                .withZone(known.status()
                        .flatMap(JournalStatus::founding)
                        .map(Founding::zone)
                        .orElseGet(ZoneId::systemDefault));
    }

    private void facts(JournalDoors.Known known) {
        Sharing sharing = known.sharing();
        if (sharing.share().isEmpty()) {
            context.theme().controls().text(panel.content(), Type.BODY, JournalUiWords.get("stations.none"));
            return;
        }
        sharing.cutOff()
                .ifPresent(since -> note(Meaning.CAUTION, JournalUiWords.get("stations.cut-off", times.format(since))));
        Facts facts = new Facts(panel.content(), context.theme());
        facts.add(
                JournalUiWords.get("stations.published"),
                JournalUiWords.get("stations.published.text", Decimals.grouped(sharing.published())));
        sharing.stations().forEach(station -> {
            facts.add(station.station().value(), text(station));
            seen(station.station(), known.sightings()).ifPresent(seen -> facts.add("", seen));
        });
    }

    /** Says how much a station had seen of each other when it recorded last. */
    private static Optional<String> seen(StationId station, List<Sighting> sightings) {
        List<String> seen = sightings.stream()
                .filter(each -> each.station().equals(station))
                .map(each -> JournalUiWords.get("stations.sighting", Decimals.grouped(each.size()), each.other()))
                .toList();
        return seen.isEmpty()
                ? Optional.empty()
                : Optional.of(JournalUiWords.get("stations.saw", String.join(", ", seen)));
    }

    private String text(StationState station) {
        if (station.trouble().isPresent()) {
            return JournalUiWords.get(
                    "stations.trouble",
                    Decimals.grouped(station.size()),
                    station.trouble().get());
        }
        return JournalUiWords.get(
                "stations.seen",
                Decimals.grouped(station.size()),
                station.newest().map(times::format).orElseGet(() -> JournalUiWords.get("stations.never")));
    }

    private void share(Field<Text> folder, Runnable done) {
        Panel.path(folder).ifPresent(path -> share(Optional.of(path), done));
    }

    private void share(Optional<Path> folder, Runnable done) {
        context.jobs()
                .run(
                        JournalUiWords.get("stations.sharing"),
                        progress -> {
                            doors.stations().share(folder);
                            return folder;
                        },
                        set -> {
                            context.say(JournalUiWords.get(set.isPresent() ? "stations.shared" : "stations.left"));
                            done.run();
                        },
                        panel::fail);
    }

    private void exchange(Runnable done) {
        context.jobs()
                .run(
                        JournalUiWords.get("stations.exchanging"),
                        progress -> doors.stations().exchange(),
                        sharing -> done.run(),
                        panel::fail);
    }
}
