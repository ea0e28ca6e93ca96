package wickbench.attachments;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.attachments.look.Pictures;
import wickbench.testing.HeardTerminal;

class AttachCommandTest {
    private static final byte[] PHOTO = Pictures.jpeg(40, 30);
    private static final String SHA = Hash.ofContent(PHOTO).hex();

    @TempDir
    Path folder;

    private TestHouse house;
    private EntryRef about;
    private Path photo;

    @BeforeEach
    void open() throws IOException {
        house = new TestHouse(folder.resolve("home"));
        about = house.anEntry();
        photo = Files.write(folder.resolve("strip.jpg"), PHOTO);
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void a_photograph_is_added_listed_got_back_and_proved() throws IOException {
        assertThat(run(false, "add", photo.toString(), "--to", about.toString()))
                .contains("0", "strip.jpg | image/jpeg | " + PHOTO.length + " | 40 × 30 pixels | " + SHA);
        assertThat(run(false, "list", about.toString())).contains("0").anyMatch(line -> line.endsWith(SHA));
        assertThat(run(true, "list", about.toString()).get(0))
                .contains("\"picture\":{\"bits\":8,\"height\":30,\"orientation\":1,\"width\":40}")
                .contains("\"state\":\"whole\"");
        Path out = folder.resolve("back.jpg");
        assertThat(run(false, "get", SHA, "--out", out.toString())).contains("0");
        assertThat(Files.readAllBytes(out)).isEqualTo(PHOTO);
        assertThat(run(false, "verify")).containsExactly("1 of 1 files are whole.", "0");
    }

    @Test
    void adding_again_says_so() {
        run(false, "add", photo.toString(), "--to", about.toString());
        assertThat(run(false, "add", photo.toString(), "--to", about.toString()))
                .contains("0")
                .anyMatch(line -> line.startsWith("These bytes were added to this entry before"));
    }

    @Test
    void into_a_folder_goes_the_name_of_the_attachment() throws IOException {
        run(false, "add", photo.toString(), "--to", about.toString());
        Path exports = Files.createDirectory(folder.resolve("exports"));
        run(false, "get", SHA, "--out", exports.toString());
        assertThat(exports.resolve("strip.jpg")).hasBinaryContent(PHOTO);
    }

    @Test
    void no_link_is_followed_and_nothing_written_over() throws IOException {
        run(false, "add", photo.toString(), "--to", about.toString());
        Path exports = Files.createDirectory(folder.resolve("exports"));
        Path victim = Files.writeString(folder.resolve("victim"), "mine");
        Files.createSymbolicLink(exports.resolve("strip.jpg"), victim);
        Files.createSymbolicLink(exports.resolve("dangling"), folder.resolve("new"));
        assertThat(run(false, "get", SHA, "--out", exports.toString())).anyMatch(line -> line.contains("is a link"));
        assertThat(run(false, "get", SHA, "--out", exports.resolve("dangling").toString()))
                .anyMatch(line -> line.contains("is a link"));
        assertThat(run(false, "get", SHA, "--out", victim.toString()))
                .anyMatch(line -> line.contains("is there already"));
        assertThat(victim).hasContent("mine");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void what_is_missing_is_named_and_ends_with_1() throws IOException {
        run(false, "add", photo.toString(), "--to", about.toString());
        Files.delete(
                folder.resolve("home/attachments").resolve(SHA.substring(0, 2)).resolve(SHA + ".bin"));
        assertThat(run(false, "verify"))
                .containsExactly("missing: " + SHA, "  strip.jpg, added to " + about, "0 of 1 files are whole.", "1");
        assertThat(run(true, "verify")).contains("[{\"sha256\":\"" + SHA + "\",\"state\":\"missing\"}]");
        assertThat(run(false, "list", about.toString())).anyMatch(line -> line.contains("| missing |"));
    }

    @Test
    void bad_input_is_one_line() {
        assertThat(run(false, "add", "nowhere.png", "--to", about.toString()))
                .containsExactly("nowhere.png: cannot be read: NoSuchFileException", "2");
        assertThat(run(false, "add", photo.toString(), "--to", "station-1:99"))
                .containsExactly("station-1:99: There is no such entry here.", "2");
        assertThat(run(false, "list", "what?")).hasSize(2).endsWith("2");
        assertThat(run(false, "get", "abc", "--out", "x")).hasSize(2).endsWith("2");
    }

    /** Runs a command and returns what it printed, and its exit code at the end. */
    private List<String> run(boolean json, String... arguments) {
        HeardTerminal terminal = HeardTerminal.of(new PersonId("op-01"), json);
        int code = new CommandLine(new AttachCommands(house.attachments(), house.index()).commands(terminal))
                .setExecutionExceptionHandler((e, command, result) -> {
                    assertThat(e).isInstanceOf(BadInput.class);
                    terminal.note(e.getMessage());
                    return 2;
                })
                .execute(arguments);
        terminal.line(String.valueOf(code));
        return terminal.printed();
    }
}
