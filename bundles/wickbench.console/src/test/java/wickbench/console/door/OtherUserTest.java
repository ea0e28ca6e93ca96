package wickbench.console.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.Meets;

/**
 * Another user of the same machine gets no answer, whichever of the fences is taken down.
 *
 * <p>As root the stranger really is another user, {@code nobody}. Whoever is not root cannot start a program as somebody else;
 * then the stranger is oneself, the fences are looked at as they stand, and what is left is that the check knows its own user.
 */
class OtherUserTest {
    private static final String ALL = "rwxrwxrwx";

    @TempDir
    Path temporary;

    private Path home;

    @BeforeEach
    void reachable() throws IOException {
        // the folder of the test itself must not be what keeps the stranger out
        loosen(temporary, "rwxr-xr-x");
        home = Files.createDirectory(temporary.resolve("home"));
        loosen(home, ALL);
        Path classes = Files.createDirectories(temporary.resolve("classes/wickbench/console/door"));
        try (InputStream stranger = Stranger.class.getResourceAsStream("Stranger.class")) {
            Files.copy(stranger, classes.resolve("Stranger.class"));
        }
        for (Path folder = classes; !folder.equals(temporary); folder = folder.getParent()) {
            loosen(folder, "rwxr-xr-x");
        }
        loosen(classes.resolve("Stranger.class"), "rw-r--r--");
    }

    @Test
    @Meets("21 CFR 11.10(d)")
    void the_folder_keeps_others_out() throws Exception {
        Holder holder = new Holder();
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            if (isRoot()) {
                assertThat(stranger())
                        .startsWith("key closed")
                        .contains("socket closed: Permission denied")
                        .doesNotContain("answer");
            }
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("door"))))
                    .isEqualTo("rwx------");
        }
        assertThat(holder.calls).isEmpty();
    }

    @Test
    void with_the_folder_open_the_key_stays_closed() throws Exception {
        Holder holder = new Holder();
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            loosen(home.resolve("door"), ALL);
            if (isRoot()) {
                assertThat(stranger()).startsWith("key closed").doesNotContain("answered");
            }
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("door/key.json"))))
                    .isEqualTo("rw-------");
        }
        assertThat(holder.calls).isEmpty();
    }

    @Test
    void with_every_fence_down_and_the_token_told_the_system_still_tells_who_it_is() throws Exception {
        Holder holder = new Holder();
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            for (String fence : List.of("door", "door/socket", "door/key.json")) {
                loosen(home.resolve(fence), ALL);
            }
            // the same words from the same user are answered, so it is the user that makes the difference
            assertThat(stranger()).contains("key read", isRoot() ? "no answer" : "answered");
            assertThat(said(self())).contains("key read", "answered");
        }
        assertThat(holder.calls).hasSize(isRoot() ? 1 : 2);
    }

    private String stranger() throws Exception {
        List<String> line = new ArrayList<>();
        if (isRoot()) {
            line.addAll(List.of("setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups", "--"));
        }
        line.addAll(self());
        return said(line);
    }

    private List<String> self() throws IOException {
        Path key = home.resolve("door/key.json");
        String token =
                DoorKey.read(key.toString(), Files.readString(key)).orRefuse().token();
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                temporary.resolve("classes").toString(),
                Stranger.class.getName(),
                home.resolve("door").toString(),
                new Request(token, List.of("exit", "0"), temporary).line());
    }

    private String said(List<String> line) throws Exception {
        Process process = new ProcessBuilder(line)
                .directory(temporary.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    private static boolean isRoot() {
        return DoorFolder.user().equals("root");
    }

    private static void loosen(Path path, String permissions) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }
}
