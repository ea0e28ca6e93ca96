package wickbench.stations;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settling;
import wickbench.api.command.Terminal;
import wickbench.api.index.Index;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Stations;
import wickbench.api.person.PersonId;

/** Founding this station, sharing with others, and settling what they decided otherwise. */
@Command(name = "station", synopsisSubcommandLabel = "COMMAND")
final class StationCommand {
    private static final int FOUND_WANTING = 1;
    private final Journal journal;
    private final Stations stations;
    private final Settling settling;
    private final Terminal terminal;
    private final StationPrint print;

    StationCommand(Journal journal, Stations stations, Index index, Settling settling, Terminal terminal) {
        this.journal = journal;
        this.stations = stations;
        this.settling = settling;
        this.terminal = terminal;
        print = new StationPrint(journal, index, terminal);
    }

    @Command(name = "found")
    int found(
            @Parameters(paramLabel = "NAME") String name,
            @Option(names = "--zone", paramLabel = "ZONE") Optional<String> zone,
            @Option(names = "--share", paramLabel = "DIR") Optional<Path> share) {
        Founding wanted = new Founding(
                station(name), zone.map(StationCommand::zone).orElseGet(ZoneId::systemDefault), OptionalLong.empty());
        // first, so that a name that is known there is refused
        share.ifPresent(folder -> stations.share(Optional.of(folder)));
        Founding founded = journal.found(wanted);
        print.founded(founded);
        return 0;
    }

    @Command(name = "share")
    int share(
            @Parameters(paramLabel = "DIR", arity = "0..1") Optional<Path> folder,
            @Option(names = "--none") boolean none) {
        if (folder.isPresent() == none) {
            throw new BadInput(Complaint.of("share", print.words("share.which")));
        }
        stations.share(folder);
        print.sharing(stations.exchange());
        return 0;
    }

    @Command(name = "list")
    int list() {
        print.sharing(stations.exchange());
        return 0;
    }

    @Command(name = "clashes")
    int clashes() {
        List<Clash> clashes = settling.open();
        print.clashes(clashes);
        return clashes.isEmpty() ? 0 : FOUND_WANTING;
    }

    @Command(name = "settle")
    int settle(
            @Parameters(paramLabel = "SUBJECT") String subject,
            @Option(names = "--stands", required = true, paramLabel = "ENTRY") String entry,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        PersonId by = terminal.actorOrRefuse();
        Optional<Passphrase> passphrase =
                sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
        settling.settle(subject, entry(entry), reason, by, passphrase);
        print.settled(subject, entry);
        return 0;
    }

    private static StationId station(String name) {
        try {
            return new StationId(name);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(name, e.getMessage()));
        }
    }

    private static ZoneId zone(String zone) {
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException e) {
            throw new BadInput(Complaint.of(zone, e.getMessage()));
        }
    }

    private static EntryRef entry(String text) {
        try {
            return EntryRef.parse(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(text, e.getMessage()));
        }
    }
}
