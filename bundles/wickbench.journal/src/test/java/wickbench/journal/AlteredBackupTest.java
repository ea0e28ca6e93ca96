package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.Backup;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;
import wickbench.testing.Meets;

/** A back-up that was altered is found, and nothing is restored from it. */
class AlteredBackupTest {
    @TempDir
    Path folder;

    private CopiedHome copied;

    @BeforeEach
    void record() throws IOException {
        copied = CopiedHome.recorded(folder);
    }

    @Test
    void half_a_back_up_is_none() throws IOException {
        copied.backUp();
        Files.delete(copied.backup().resolve("backup.json"));
        assertThatThrownBy(() -> copied.restore(Optional.empty())).hasMessageContaining("is no whole back-up");
        assertThat(copied.target()).doesNotExist();
    }

    @Test
    @Meets("21 CFR 11.10(c)")
    void a_file_missing_or_altered_by_a_byte_is_named_and_nothing_is_restored() throws IOException {
        copied.backUp();
        for (String name : CopiedHome.files(copied.backup().resolve("home"))) {
            Path file = copied.backup().resolve("home").resolve(name);
            byte[] right = Files.readAllBytes(file);
            byte[] wrong = right.clone();
            wrong[wrong.length / 2] ^= 4;
            Files.write(file, wrong);
            assertThatThrownBy(() -> copied.restore(Optional.empty()))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("1 of its files are missing or altered, first " + name);
            Files.delete(file);
            assertThatThrownBy(() -> copied.restore(Optional.empty())).hasMessageContaining("first " + name);
            Files.write(file, right);
            assertThat(copied.target()).doesNotExist();
        }
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
    }

    @Test
    void a_list_altered_to_fit_an_altered_journal_is_found_by_its_seal() throws IOException {
        copied.backUp();
        Path segment = copied.backup().resolve("home/journal/station-1/entries-000000.jsonl");
        String before = Hash.ofContent(Files.readAllBytes(segment)).hex();
        Files.writeString(segment, Files.readString(segment).replace("\"n\":7,", "\"n\":8,"));
        String after = Hash.ofContent(Files.readAllBytes(segment)).hex();
        Path list = copied.backup().resolve("backup.json");
        Files.writeString(list, Files.readString(list).replace(before, after));
        assertThatThrownBy(() -> copied.restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("does not verify, and nothing was restored");
        assertThat(copied.target()).doesNotExist();
    }

    @Test
    void a_list_that_leads_out_of_the_home_is_refused() throws IOException {
        copied.backUp();
        Path list = copied.backup().resolve("backup.json");
        for (String path : List.of("../outside.json", "/tmp/outside.json", "people/../../outside.json", ".")) {
            String text = Files.readString(list);
            String evil = text.replaceFirst("\"path\":\"[^\"]*\"", "\"path\":\"" + path + "\"");
            Files.writeString(list, evil);
            assertThatThrownBy(() -> copied.restore(Optional.empty())).isInstanceOf(Refusal.class);
            Files.writeString(list, text);
        }
        // also where what it leads to is there, as the list says it is
        Files.writeString(copied.backup().resolve("outside.json"), "{}");
        String sum = Hash.ofContent("{}".getBytes(StandardCharsets.UTF_8)).hex();
        String text = Files.readString(list);
        Files.writeString(
                list,
                text.replace(
                        "\"files\":[",
                        "\"files\":[{\"bytes\":2,\"path\":\"../outside.json\",\"sha256\":\"" + sum + "\"},"));
        assertThatThrownBy(() -> copied.restore(Optional.empty()))
                .hasMessageContaining("1 of its files are missing or altered, first ../outside.json");
        assertThat(new ArrayList<>(List.of(folder.toFile().list()))).containsExactlyInAnyOrder("home", "backup");
    }

    @Test
    void a_list_that_names_another_checkpoint_than_the_journals_is_found() throws IOException {
        Backup made = copied.backUp();
        Path list = copied.backup().resolve("backup.json");
        String text = Files.readString(list);
        StationKey other = StationKey.fromSeed(new byte[OpenKey.BYTES]);
        Frontier longer = new Frontier();
        for (int leaf = 0; leaf < CopiedHome.NOTES + 2; leaf++) {
            if (leaf == CopiedHome.NOTES + 1) {
                refusedWith(text, made, Seal.sign(other, Recorded.STATION, longer, 1));
            }
            longer.add(new byte[32]);
        }
        refusedWith(text, made, Seal.sign(other, Recorded.STATION, longer, 1));
        Files.writeString(list, text);
        assertThat(copied.restore(Optional.empty()).verification().holds()).isTrue();
    }

    private void refusedWith(String list, Backup made, Seal other) throws IOException {
        String mine = new Json.Text(made.checkpoint().note()).canonical();
        assertThat(list).contains(mine);
        Files.writeString(
                copied.backup().resolve("backup.json"), list.replace(mine, new Json.Text(other.note()).canonical()));
        assertThatThrownBy(() -> copied.restore(Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("does not verify, and nothing was restored");
        assertThat(copied.target()).doesNotExist();
    }
}
