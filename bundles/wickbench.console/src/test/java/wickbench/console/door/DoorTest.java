package wickbench.console.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoorTest {
    @TempDir
    Path home;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Holder holder = new Holder();

    @Test
    void the_holder_prints_where_the_caller_reads() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            assertThat(knock().command(List.of("echo", "µg", "two words"), Path.of("/from/here")))
                    .isEqualTo(new Reply.Ended(0));
        }
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("[echo, µg, two words] from /from/here\n");
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("noted\n");
    }

    @Test
    void every_exit_code_comes_back() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            for (int code : new int[] {0, 1, 2, 3, 70, 255}) {
                assertThat(knock().command(List.of("exit", String.valueOf(code)), home))
                        .isEqualTo(new Reply.Ended(code));
            }
        }
    }

    @Test
    void much_output_comes_whole() throws IOException {
        int lines = 200_000;
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            knock().command(List.of("lines", String.valueOf(lines)), home);
        }
        assertThat(out.toString(StandardCharsets.UTF_8).lines()).hasSize(lines).endsWith("line " + (lines - 1));
    }

    @Test
    void a_long_piece_is_cut_into_frames_and_put_together_again() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            knock().command(List.of("piece", "3000000"), home);
        }
        assertThat(out.size()).isEqualTo(3_000_000);
    }

    @Test
    void a_secret_is_asked_of_the_caller() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            Knock knowing =
                    new Knock(home, print(out), print(err), prompt -> Optional.of((prompt + "=ßecret").toCharArray()));
            knowing.command(List.of("ask"), home);
            knock().command(List.of("ask"), home);
        }
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("pass=ßecret\nnobody to ask\n");
    }

    @Test
    void callers_do_not_wait_for_one_another() throws Exception {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            CompletableFuture<Reply> first =
                    CompletableFuture.supplyAsync(() -> knock().command(List.of("wait"), home));
            assertThat(holder.waiting.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(knock().command(List.of("exit", "1"), home)).isEqualTo(new Reply.Ended(1));
            holder.goOn.countDown();
            assertThat(first.get(10, TimeUnit.SECONDS)).isEqualTo(new Reply.Ended(0));
        }
    }

    @Test
    void closing_waits_for_the_command_that_runs() throws Exception {
        Door door = Door.open(home, holder);
        CompletableFuture<Reply> first = CompletableFuture.supplyAsync(() -> knock().command(List.of("wait"), home));
        assertThat(holder.waiting.await(10, TimeUnit.SECONDS)).isTrue();
        CompletableFuture<Void> closed = CompletableFuture.runAsync(() -> close(door));
        // a second caller finds nobody while the first is still inside
        while (Files.exists(new DoorFolder(home).key())) {
            Thread.onSpinWait();
        }
        assertThat(knock().command(List.of("exit", "0"), home)).isEqualTo(new Reply.Nobody());
        assertThat(closed).isNotDone();
        holder.goOn.countDown();
        assertThat(first.get(10, TimeUnit.SECONDS)).isEqualTo(new Reply.Ended(0));
        closed.get(10, TimeUnit.SECONDS);
    }

    @Test
    void closing_does_not_wait_for_a_caller_who_says_nothing() throws Exception {
        Door door = Door.open(home, holder);
        try (SocketChannel silent = SocketChannel.open(UnixDomainSocketAddress.of(home.resolve("door/socket")))) {
            CompletableFuture.runAsync(() -> close(door)).get(10, TimeUnit.SECONDS);
            assertThat(silent.isOpen()).isTrue();
        }
        assertThat(home.resolve("door")).doesNotExist();
    }

    @Test
    void the_socket_and_its_key_are_the_owners_alone() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            assertThat(permissions(home.resolve("door"))).isEqualTo("rwx------");
            assertThat(permissions(home.resolve("door/key.json"))).isEqualTo("rw-------");
        }
    }

    @Test
    void a_folder_or_key_that_others_may_open_is_not_trusted() throws IOException {
        for (String loose : List.of("door", "door/key.json")) {
            try (Door door = Door.open(home, holder)) {
                assertThat(door).isNotNull();
                Files.setPosixFilePermissions(home.resolve(loose), PosixFilePermissions.fromString("rwxr-xr-x"));
                assertThat(knock().command(List.of("exit", "0"), home)).isEqualTo(new Reply.Nobody());
            }
        }
        assertThat(holder.calls).isEmpty();
    }

    @Test
    void who_does_not_know_the_token_hears_nothing() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            Path key = home.resolve("door/key.json");
            String other = Files.readString(key).replaceFirst("\"token\":\"..", "\"token\":\"zz");
            Files.writeString(key, other);
            assertThat(knock().command(List.of("exit", "0"), home)).isEqualTo(new Reply.Nobody());
        }
        assertThat(holder.calls).isEmpty();
    }

    @Test
    void a_socket_left_by_a_killed_holder_is_nobody_and_is_replaced() throws IOException {
        Files.createDirectories(
                home.resolve("door"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        DoorFolder folder = new DoorFolder(home);
        DoorKey dead = DoorKey.cut(folder.prepare());
        try (var left = java.nio.channels.ServerSocketChannel.open(java.net.StandardProtocolFamily.UNIX)) {
            left.bind(UnixDomainSocketAddress.of(dead.socket()));
            folder.keep(dead);
        }
        assertThat(dead.socket()).exists();
        assertThat(knock().command(List.of("exit", "0"), home)).isEqualTo(new Reply.Nobody());
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            assertThat(knock().command(List.of("exit", "0"), home)).isEqualTo(new Reply.Ended(0));
        }
    }

    @Test
    void a_home_with_a_path_too_long_for_a_socket_has_one_elsewhere() throws IOException {
        Path deep = Files.createDirectories(home.resolve("deep".repeat(20)).resolve("deeper".repeat(10)));
        Path socket;
        try (Door door = Door.open(deep, holder)) {
            assertThat(door).isNotNull();
            socket = new DoorFolder(deep).find().orElseThrow().socket();
            assertThat(socket.startsWith(deep)).isFalse();
            assertThat(permissions(socket.getParent())).isEqualTo("rwx------");
            Knock knock = new Knock(deep, print(out), print(err), prompt -> Optional.empty());
            assertThat(knock.command(List.of("exit", "0"), home)).isEqualTo(new Reply.Ended(0));
        }
        assertThat(socket.getParent()).doesNotExist();
    }

    @Test
    void the_window_comes_forward_if_there_is_one() throws IOException {
        try (Door door = Door.open(home, holder)) {
            assertThat(door).isNotNull();
            assertThat(knock().comeForward()).isFalse();
            holder.hasWindow = true;
            assertThat(knock().comeForward()).isTrue();
        }
        assertThat(knock().comeForward()).isFalse();
    }

    private Knock knock() {
        return new Knock(home, print(out), print(err), prompt -> Optional.empty());
    }

    private static PrintStream print(ByteArrayOutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }

    private static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    private static void close(Door door) {
        try {
            door.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
