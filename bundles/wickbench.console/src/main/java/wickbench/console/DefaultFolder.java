package wickbench.console;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where a home is when nobody says: the place for a user's data that the operating system names. */
final class DefaultFolder {
    private static final String NAME = "wickbench";

    private DefaultFolder() {}

    static Path ofThisSystem() {
        return of(System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv());
    }

    static Path of(String system, Path user, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("win")) {
            return folder(environment, "APPDATA")
                    .orElse(user.resolve("AppData/Roaming"))
                    .resolve(NAME);
        }
        if (name.contains("mac")) {
            return user.resolve("Library/Application Support").resolve(NAME);
        }
        return folder(environment, "XDG_DATA_HOME")
                .orElse(user.resolve(".local/share"))
                .resolve(NAME);
    }

    private static Optional<Path> folder(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
