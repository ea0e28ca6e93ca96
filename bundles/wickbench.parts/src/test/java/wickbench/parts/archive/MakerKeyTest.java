package wickbench.parts.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;

class MakerKeyTest {
    @TempDir
    Path folder;

    @Test
    void a_secret_is_for_its_owner_and_never_written_over() throws IOException {
        Path secret = folder.resolve("secret");
        MakerKey.make(secret, folder.resolve("open"));
        assertThat(Files.getPosixFilePermissions(secret))
                .containsExactlyInAnyOrder(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
        assertThatThrownBy(() -> MakerKey.make(secret, folder.resolve("other")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("not written over");
        assertThat(folder.resolve("other")).doesNotExist();
    }

    @Test
    void what_is_no_key_is_told_by_file() throws IOException {
        Path open = Files.writeString(
                Files.createDirectories(folder.resolve("makers")).resolve("x.pem"), "hello");
        assertThatThrownBy(() -> Makers.of(folder))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(open.toString());
        assertThatThrownBy(() -> MakerKey.read(open))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("PKCS #8");
        assertThatThrownBy(() -> MakerKey.read(folder.resolve("none"))).isInstanceOf(BadInput.class);
    }
}
