package wickbench.people.ui;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseRecovery;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.RecoveryView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;

/** A real home with its people. */
final class TestHouse implements AutoCloseable {
    private final JournalFolder journal;
    private final H2Index index;
    private final PeopleDoors doors;

    TestHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(new PeopleView(), new RecoveryView()));
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> java.util.Optional.empty());
        Keeping keeping = new Keeping(home, journal, roster, at -> java.util.Optional.empty());
        SecretFiles files = SecretFiles.at(HashCost.LEAST, home, roster);
        doors = new PeopleDoors(
                new PeopleService(home, journal, roster, authority, keeping),
                signIn,
                new HouseCredentials(home, journal, roster, signIn, authority, keeping, files),
                new HouseRecovery(home, journal, index, roster, signIn, authority, keeping, files),
                authority,
                journal);
    }

    PeopleDoors doors() {
        return doors;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
