package wickbench.people.profile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Profiles;
import wickbench.api.profile.Profiles.IssuedProfile;
import wickbench.api.words.Words;

/** {@code profile}: check a file, issue it, show what holds. */
@Component(property = CommandSet.NAME + "=profile")
public final class ProfileCommand implements CommandSet {
    private static final long LARGEST = 1 << 16;

    private final Profiles profiles;
    private final Words words = Words.of(ProfileCommand.class, "profile");

    @Activate
    public ProfileCommand(@Reference Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "profile", synopsisSubcommandLabel = "COMMAND")
    private final class Group {
        private final Terminal terminal;

        Group(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "check")
        int check(@Parameters(paramLabel = "FILE.json") Path file) {
            terminal.line(words.get("good", read(file).plant()));
            return 0;
        }

        @Command(name = "issue")
        int issue(@Parameters(paramLabel = "FILE.json") Path file, @Option(names = "--sign") boolean sign) {
            Profile profile = read(file);
            PersonId by = terminal.actorOrRefuse();
            Optional<Passphrase> passphrase =
                    sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
            IssuedProfile issued = profiles.issue(profile, by, passphrase);
            terminal.note(words.get(issued.signed() ? "issued-signed" : "issued", issued.entry(), issued.from()));
            return 0;
        }

        @Command(name = "show")
        int show() {
            List<IssuedProfile> all = profiles.all();
            if (all.isEmpty()) {
                terminal.note(words.get("none"));
                return 0;
            }
            IssuedProfile newest = all.get(all.size() - 1);
            if (terminal.json()) {
                terminal.json(ProfileJson.write(newest.profile()));
            } else {
                print(newest);
            }
            return 0;
        }

        private void print(IssuedProfile issued) {
            new TreeMap<>(ProfileJson.write(issued.profile()).members())
                    .forEach((name, value) -> terminal.line(words.get("line", words.get(name), text(value))));
            terminal.line(
                    words.get(issued.signed() ? "held-signed" : "held", issued.entry(), issued.from(), issued.by()));
        }

        private Profile read(Path file) {
            String name = file.getFileName().toString();
            try {
                if (Files.size(file) > LARGEST) {
                    throw new BadInput(Complaint.of(name, words.get("large", LARGEST)));
                }
                return ProfileJson.read(name, Files.readString(file)).orRefuse();
            } catch (NoSuchFileException e) {
                throw new BadInput(Complaint.of(file.toString(), words.get("absent")));
            } catch (IOException e) {
                throw new BadInput(Complaint.of(file.toString(), words.get("unreadable", e.getMessage())));
            }
        }

        private static String text(Json value) {
            if (value instanceof Json.Arr list) {
                return String.join(", ", list.items().stream().map(Group::text).toList());
            }
            if (value instanceof Json.Obj members) {
                return new TreeMap<>(members.members())
                        .entrySet().stream()
                                .map(member -> member.getKey() + " " + text(member.getValue()))
                                .collect(Collectors.joining(", "));
            }
            return value instanceof Json.Text text ? text.value() : value.canonical();
        }
    }
}
