package wickbench.people.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** What the profile in force says is what pages and reports show. */
class HouseSiteTest {
    @TempDir
    Path folder;

    @Test
    void the_newest_profile_is_the_site() {
        Home home = new HomeFolder(folder);
        try (JournalFolder journal = JournalFolder.open(home, entries -> {});
                H2Index index = H2Index.open(folder.resolve("index"), journal, () -> List.of(new ProfileView()))) {
            HouseSite site = new HouseSite(home, journal, new ProfileInForce(home, index));
            assertThat(site.now().plant()).isEmpty();

            for (String plant : List.of("Feldmark Mill", "Feldmark Mill, hall 2")) {
                Json.Obj profile = Profiled.object().with("plant", plant);
                journal.append(List.of(new Draft(
                        Draft.randomId(home.chance()),
                        new PersonId("p-01"),
                        ProfileView.ISSUED,
                        ProfileView.VERSION,
                        Json.object().with("profile", profile))));
                assertThat(site.now().plant()).contains(plant);
            }
            assertThat(site.now().zone().getId()).isEqualTo("Europe/Vienna");
            assertThat(site.now().reviewDays()).isEqualTo(7);
        }
    }
}
