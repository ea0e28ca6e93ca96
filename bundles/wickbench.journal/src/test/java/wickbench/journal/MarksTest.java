package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/** Small files and entries by which a program knows something of a folder: what cannot be read says nothing, and stops nothing. */
class MarksTest {
    private static final String KEY = "ab".repeat(32);

    @TempDir
    Path folder;

    private final Disk disk = new RealDisk();

    @BeforeEach
    void nothing_is_there() throws IOException {
        assertThat(CopyMark.read(folder)).isEmpty();
        assertThat(WriterMark.read(folder)).isEmpty();
        assertThat(RestoredMark.read(folder)).isEmpty();
    }

    @Test
    void what_was_written_is_read() throws IOException {
        CopyMark copy = new CopyMark(KEY, 12);
        copy.write(disk, folder);
        assertThat(CopyMark.read(folder)).contains(copy);
        WriterMark writer = new WriterMark(new UUID(1, 2), 3);
        writer.write(disk, folder);
        assertThat(WriterMark.read(folder)).contains(writer);
        RestoredMark restored = new RestoredMark(Json.object().with("made", "then"));
        Files.write(folder.resolve(RestoredMark.FILE), restored.bytes());
        assertThat(RestoredMark.read(folder)).contains(restored);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"told\":1}",
                "{\"key_fingerprint\":7,\"told\":1}",
                "{\"key_fingerprint\":\"a\"}"
            })
    void a_mark_of_a_copy_that_cannot_be_read_makes_no_copy(String text) throws IOException {
        Files.writeString(CopyMark.file(folder), text);
        assertThat(CopyMark.read(folder)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "\u0000\u0000", "{\"beat\":1}", "{\"run\":\"me\",\"beat\":1}", "{\"run\":\"0-0-0-0-1\"}"})
    void a_mark_of_a_writer_that_cannot_be_read_is_nobodys(String text) throws IOException {
        Files.writeString(folder.resolve(ShareFolder.WRITER), text);
        assertThat(WriterMark.read(folder)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{\"made\":", "[1]"})
    void a_mark_of_restoring_that_cannot_be_read_is_none(String text) throws IOException {
        Files.writeString(folder.resolve(RestoredMark.FILE), text);
        assertThat(RestoredMark.read(folder)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"station\":\"No Name\",\"public_key\":\"k\",\"key_fingerprint\":\"f\"}",
                "{\"station\":\"bench\",\"public_key\":\"k\"}"
            })
    void an_entry_that_pins_no_key_pins_none(String body) throws IOException {
        Recorded.closed(folder, 1);
        Entry note = Recorded.entries(folder).get(1);
        assertThat(Pin.of(note)).isEmpty();
        assertThat(Pin.of(saying(note, object(body)))).isEmpty();
    }

    @Test
    void an_entry_that_pins_a_key_does() throws IOException {
        Recorded.closed(folder, 1);
        Json.Obj body = object("{\"station\":\"bench\",\"public_key\":\"k\",\"key_fingerprint\":\"f\"}");
        assertThat(Pin.of(saying(Recorded.entries(folder).get(1), body)))
                .hasValueSatisfying(pin -> assertThat(pin.fingerprint()).isEqualTo("f"));
    }

    private static Json.Obj object(String text) {
        return ((Checked.Good<Json.Obj>) JsonReader.readObject("test", text)).value();
    }

    private static Entry saying(Entry entry, Json.Obj body) {
        return new Entry(
                entry.ref(),
                entry.id(),
                entry.prev(),
                entry.at(),
                entry.offset(),
                entry.by(),
                Pin.KIND,
                Pin.V,
                body,
                entry.leaf());
    }
}
