package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.verify.EvidenceDesk;
import wickbench.bench.verify.EvidenceView;
import wickbench.bench.verify.PaperDesk;
import wickbench.figures.commands.KeptService;
import wickbench.figures.commands.KeptView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;
import wickbench.report.chart.ScreenPainter;
import wickbench.report.pdf.PdfPrinter;

/** A real home where people have passphrases, roles are asked, and methods are signed. */
final class MethodsHouse implements AutoCloseable {
    static final PersonId ADA = new PersonId("p-01");
    static final PersonId BO = new PersonId("p-02");
    static final String ADAS = "seven grey herons wade";

    private final JournalFolder journal;
    private final H2Index index;
    private final HouseSignIn signIn;
    private final MethodDoors doors;
    private final KeptService kept;

    MethodsHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new BenchView(), new EvidenceView(), new KeptView(), new PeopleView()));
        Roster roster = new Roster(home, journal, index);
        signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        Keeping keeping = new Keeping(home, journal, roster, at -> Optional.empty());
        PeopleService people = new PeopleService(home, journal, roster, authority, keeping);
        HouseCredentials credentials = new HouseCredentials(
                home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster));
        people.enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR, Role.REVIEWER), ADA);
        credentials.set(ADA, Optional.empty(), typed(ADAS));
        signIn.open(ADA, typed(ADAS));
        people.enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA);
        credentials.reset(BO, typed("come in and choose yours"), new Signing(ADA, typed(ADAS)), Optional.empty());
        signIn.close(ADA);
        MethodShelf shelf = new MethodShelf(journal, index, authority);
        kept = new KeptService(home, journal, index);
        EvidenceDesk evidence = new EvidenceDesk(home, journal, index, authority, shelf, Optional.of(kept));
        doors = new MethodDoors(
                shelf,
                () -> Site.of(Optional.empty(), journal.founding()),
                people,
                authority,
                signIn,
                evidence,
                new PaperDesk(
                        shelf,
                        evidence,
                        List.of(new PdfPrinter(home, journal, () -> Site.of(Optional.empty(), journal.founding())))),
                Optional.of(new ScreenPainter()));
    }

    static Passphrase typed(String text) {
        return Passphrase.of(text.toCharArray());
    }

    MethodDoors doors() {
        return doors;
    }

    KeptService kept() {
        return kept;
    }

    /** Lets Ada sit at the desk. */
    void adaSits() {
        signIn.open(ADA, typed(ADAS));
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
