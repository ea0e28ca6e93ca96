package wickbench.attachments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.AttachmentState;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.MediaType;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.attachments.look.Pictures;

class AttachmentServiceTest {
    private static final PersonId WHO = new PersonId("op-01");
    private static final byte[] PHOTO = Pictures.png(40, 30);

    @TempDir
    Path folder;

    private TestHouse house;
    private EntryRef about;

    @BeforeEach
    void open() {
        house = new TestHouse(folder);
        about = house.anEntry();
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void a_file_is_kept_by_its_hash_and_named_by_an_entry() throws IOException {
        Attachments.Kept kept = add(PHOTO, "../strip 4.png");
        Attachment added = kept.attachment();
        assertThat(kept.added()).isTrue();
        assertThat(added.content()).isEqualTo(Hash.ofContent(PHOTO));
        assertThat(added.type()).isEqualTo(MediaType.PNG);
        assertThat(added.name().value()).isEqualTo("strip 4.png");
        assertThat(Files.readAllBytes(file(PHOTO))).isEqualTo(PHOTO);
        assertThat(house.journal().line(added.entry()).orElseThrow())
                .contains("\"kind\":\"attachment.added\"")
                .contains("\"body\":{\"about\":\"" + about + "\",\"name\":\"strip 4.png\",\"sha256\":\""
                        + added.content() + "\",\"size\":" + PHOTO.length + ",\"type\":\"image/png\"}");
        assertThat(attachments().of(about)).containsExactly(added);
        assertThat(attachments().with(added.content())).containsExactly(added);
        try (InputStream in = attachments().open(added.content())) {
            assertThat(in.readAllBytes()).isEqualTo(PHOTO);
        }
        assertThat(attachments().picture(added.content()).orElseThrow().width()).isEqualTo(40);
    }

    @Test
    void the_same_bytes_again_add_nothing_to_the_same_entry() {
        Attachments.Kept first = add(PHOTO, "a.png");
        long size = house.size();
        Attachments.Kept again = add(PHOTO, "a.png");
        assertThat(again.added()).isFalse();
        assertThat(again.attachment()).isEqualTo(first.attachment());
        assertThat(house.size()).isEqualTo(size);
        EntryRef other = house.anEntry();
        assertThat(attachments().add(stream(PHOTO), "a.png", other, WHO).added())
                .isTrue();
        assertThat(attachments().with(Hash.ofContent(PHOTO))).hasSize(2);
    }

    @Test
    void what_cannot_be_read_leaves_nothing_behind() throws IOException {
        long size = house.size();
        byte[] cut = java.util.Arrays.copyOf(PHOTO, PHOTO.length - 3);
        assertThatThrownBy(() -> add(new byte[0], "a.png"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("empty");
        assertThatThrownBy(() -> add(cut, "a.png")).isInstanceOf(BadInput.class).hasMessageContaining("cut short");
        assertThatThrownBy(() -> attachments().add(endless(), "big.txt", about, WHO))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("64 MiB");
        assertThat(house.size()).isEqualTo(size);
        assertThat(files()).isEmpty();
    }

    @Test
    void an_entry_that_is_not_there_gets_nothing() throws IOException {
        EntryRef nowhere = new EntryRef(new StationId("elsewhere"), 7);
        assertThatThrownBy(() -> attachments().add(stream(PHOTO), "a.png", nowhere, WHO))
                .isInstanceOf(BadInput.class);
        assertThat(files()).isEmpty();
    }

    @Test
    void an_altered_file_is_not_opened_and_a_missing_one_is_named() throws IOException {
        Hash content = add(PHOTO, "a.png").attachment().content();
        byte[] other = PHOTO.clone();
        other[other.length / 2] ^= 1;
        Files.write(file(PHOTO), other);
        assertThatThrownBy(() -> attachments().open(content))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("attachment.altered"));
        assertThat(verified()).containsExactly(Map.entry(content, AttachmentState.ALTERED));
        Files.delete(file(PHOTO));
        assertThatThrownBy(() -> attachments().picture(content))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("attachment.missing"));
        assertThat(verified()).containsExactly(Map.entry(content, AttachmentState.MISSING));
    }

    @Test
    void adding_the_same_bytes_mends_a_missing_or_altered_file() throws IOException {
        Hash content = add(PHOTO, "a.png").attachment().content();
        Files.writeString(file(PHOTO), "other");
        add(PHOTO, "a.png");
        assertThat(verified()).containsExactly(Map.entry(content, AttachmentState.WHOLE));
    }

    @Test
    void a_link_in_the_place_of_a_file_is_not_followed() throws IOException {
        Hash content = add(PHOTO, "a.png").attachment().content();
        Path elsewhere = Files.move(file(PHOTO), folder.resolve("elsewhere"));
        Files.createSymbolicLink(file(PHOTO), elsewhere);
        assertThat(verified()).containsExactly(Map.entry(content, AttachmentState.MISSING));
        assertThatThrownBy(() -> attachments().open(content)).isInstanceOf(Refusal.class);
    }

    @Test
    void what_nobody_added_is_unknown() {
        assertThatThrownBy(() -> attachments().open(Hash.ofContent("x")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("attachment.unknown"));
    }

    @Test
    void the_index_made_anew_says_the_same() {
        add(PHOTO, "a.png");
        add("pH 7\n".getBytes(StandardCharsets.UTF_8), "notes.txt");
        List<Attachment> before = attachments().of(about);
        house.index().rebuild(Progress.NONE);
        assertThat(attachments().of(about)).isEqualTo(before).hasSize(2);
    }

    private Attachments attachments() {
        return house.attachments();
    }

    private Attachments.Kept add(byte[] content, String name) {
        return attachments().add(stream(content), name, about, WHO);
    }

    private Map<Hash, AttachmentState> verified() {
        return attachments().verify(Progress.NONE);
    }

    private Path file(byte[] content) {
        String hex = Hash.ofContent(content).hex();
        return folder.resolve("attachments").resolve(hex.substring(0, 2)).resolve(hex + ".bin");
    }

    private List<Path> files() throws IOException {
        Path all = folder.resolve("attachments");
        if (!Files.exists(all)) {
            return List.of();
        }
        try (Stream<Path> found = Files.walk(all)) {
            return found.filter(Files::isRegularFile).toList();
        }
    }

    private static InputStream stream(byte[] content) {
        return new ByteArrayInputStream(content);
    }

    private static InputStream endless() {
        return new InputStream() {
            @Override
            public int read() {
                return 'x';
            }

            @Override
            public int read(byte[] buffer, int from, int length) {
                java.util.Arrays.fill(buffer, from, from + length, (byte) 'x');
                return length;
            }
        };
    }
}
