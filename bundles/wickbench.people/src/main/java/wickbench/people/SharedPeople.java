package wickbench.people;

import java.nio.file.Files;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.api.journal.SharedFiles;

/** The files with people's names and secrets, which every station needs; those of the forgotten nobody gets. */
@Component
public final class SharedPeople implements SharedFiles {
    static final String FOLDER = "people";
    private final Home home;
    private final Roster roster;

    @Activate
    public SharedPeople(@Reference Home home, @Reference Roster roster) {
        this.home = home;
        this.roster = roster;
    }

    @Override
    public String folder() {
        return FOLDER;
    }

    @Override
    public List<String> wanted() {
        return roster.here().stream()
                .map(known -> known.id() + "/" + known.file() + ".json")
                .filter(path ->
                        !Files.isRegularFile(home.folder().resolve(FOLDER).resolve(path)))
                .toList();
    }
}
