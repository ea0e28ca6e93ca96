package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.progress.Progress;

/** Secrets on a file system that knows owners, and on one that does not, as on a stick. */
class OwnersTest {
    @TempDir
    Path folder;

    private FileSystem withoutOwners() throws IOException {
        return FileSystems.newFileSystem(folder.resolve("stick.zip"), Map.of("create", "true"));
    }

    @Test
    void a_secret_is_for_its_owner_where_there_are_owners_and_a_file_like_others_elsewhere() throws IOException {
        Owners.makeFile(folder.resolve("key"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("key"))))
                .isEqualTo("rw-------");
        try (FileSystem stick = withoutOwners()) {
            Owners.makeFile(stick.getPath("/key"));
            assertThat(Files.size(stick.getPath("/key"))).isZero();
        }
    }

    @Test
    void a_folder_is_closed_where_there_are_owners_and_left_as_it_is_elsewhere() throws IOException {
        Owners.closeFolder(folder);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        try (FileSystem stick = withoutOwners()) {
            Owners.closeFolder(stick.getPath("/"));
            new RealDisk().forceFolder(stick.getPath("/"));
            assertThat(Files.list(stick.getPath("/"))).isEmpty();
        }
    }

    @Test
    void a_home_is_copied_to_where_nobody_owns_files() throws IOException {
        Path key = Files.writeString(folder.resolve("station-1.pem"), "secret");
        try (FileSystem stick = withoutOwners()) {
            new FileCopy(6, Progress.NONE).copy(key, 6, stick.getPath("/home"), "keys/station-1.pem");
            assertThat(Files.readString(stick.getPath("/home/keys/station-1.pem")))
                    .isEqualTo("secret");
        }
    }

    @Test
    void a_folder_is_not_made_where_a_file_stands() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        RealDisk disk = new RealDisk();
        assertThatThrownBy(() -> disk.createFolder(file)).isInstanceOf(FileAlreadyExistsException.class);
        disk.createFolder(folder);
        assertThat(file).hasContent("x");
    }

    @Test
    void a_file_that_became_shorter_while_it_was_copied_says_how_long_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "short");
        Manifest.Item item = new FileCopy(100, Progress.NONE).copy(file, 100, folder.resolve("to"), "file");
        assertThat(item.bytes()).isEqualTo(5);
        assertThat(folder.resolve("to/file")).hasContent("short");
    }

    @Test
    void verifying_nothing_is_the_whole_of_the_second_half() {
        long[] told = new long[2];
        Progress second = new FileCopy(0, (done, total) -> {
                    told[0] = done;
                    told[1] = total;
                    return true;
                })
                .second();
        assertThat(second.at(0, 0)).isTrue();
        assertThat(told).containsExactly(0, 1);
        FileCopy ten = new FileCopy(10, (done, total) -> {
            told[0] = done;
            told[1] = total;
            return true;
        });
        ten.second().at(1, 2);
        assertThat(told).containsExactly(15, 20);
        ten.second().at(0, 0);
        assertThat(told).containsExactly(20, 20);
    }
}
