package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.journal.JournalFolder;
import wickbench.testing.Meets;
import wickbench.testing.Recipe;
import wickbench.testing.Recipe.Said;

/** The page for auditors, run as it is printed: its scripts are taken out of it, saved and executed in its order. */
@Tag("long")
class RecipeTest {
    private static final int ENTRIES = 700;

    @TempDir
    Path folder;

    @BeforeEach
    void exportTiles() {
        try (JournalFolder journal = open()) {
            List<Draft> notes = new ArrayList<>();
            for (int i = 0; i < ENTRIES; i++) {
                Json.Obj body = Json.object().with("n", i).with("text", "rinse € \n");
                notes.add(new Draft(new UUID(1, i), new PersonId("rivera"), "note.written", 1, body));
            }
            journal.append(notes);
            journal.proofs().exportTiles(new StationId("station-1"), folder.resolve("tiles"), Progress.NONE);
        }
    }

    private JournalFolder open() {
        return JournalFolder.open(new HomeFolder(folder.resolve("home")), entries -> {});
    }

    private EntryProof prove(long place, long against) throws IOException {
        try (JournalFolder journal = open()) {
            EntryProof proof =
                    journal.proofs().prove(new EntryRef(new StationId("station-1"), place), OptionalLong.of(against));
            save(proof.json().canonical());
            return proof;
        }
    }

    private void save(String proof) throws IOException {
        Files.writeString(folder.resolve("proof.json"), proof);
    }

    private Said run() throws IOException, InterruptedException {
        return Recipe.run(folder, "One entry", "The whole journal");
    }

    @ParameterizedTest
    @Meets({"EU GMP Annex 11 7.1", "EU GMP Annex 11 17"})
    @CsvSource({"0, 1", "0, 701", "17, 18", "17, 256", "17, 701", "255, 256", "511, 600", "700, 701", "699, 700"})
    void an_entry_of_a_report_is_verified_as_the_page_says(long place, long against) throws Exception {
        EntryProof proof = prove(place, against);
        Said said = run();
        assertThat(said.code()).as(said.text()).isZero();
        List<String> lines = said.lines();
        assertThat(lines.get(0)).isEqualTo(proof.leaf() + "  -");
        assertThat(lines.get(1)).isEqualTo(proof.leaf().hex());
        assertThat(lines)
                .contains(
                        "Signature Verified Successfully",
                        "entry " + place + " is under root " + proof.root() + " over " + against
                                + " entries, which the signed 701 go on from",
                        "all 701 entries give the signed root "
                                + proof.checkpoint().root());
        try (JournalFolder journal = open()) {
            String fingerprint = journal.status().keyFingerprint().orElseThrow().hex();
            assertThat(lines).contains(fingerprint + "  -");
        }
    }

    @Test
    void an_altered_entry_is_found() throws Exception {
        EntryProof proof = prove(17, 256);
        save(proof.json().canonical().replace("\\\"n\\\":16", "\\\"n\\\":61"));
        assertThat(run().text()).contains("the entry is not under the root");
    }

    @Test
    void another_root_or_an_altered_step_is_found() throws Exception {
        EntryProof proof = prove(17, 256);
        String right = proof.json().canonical();
        save(right.replace(proof.root().hex(), "0".repeat(64)));
        assertThat(run().text()).contains("the entry is not under the root");
        save(right.replace(proof.inclusion().get(3).hex(), "0".repeat(64)));
        assertThat(run().text()).contains("the entry is not under the root");
        save(right.replace(proof.consistency().get(0).hex(), "0".repeat(64)));
        assertThat(run().text()).contains("the journal was changed");
    }

    @Test
    void a_checkpoint_that_the_key_did_not_sign_is_found() throws Exception {
        EntryProof proof = prove(17, 256);
        save(proof.json().canonical().replace("station-1\\n701\\n", "station-1\\n702\\n"));
        Said said = run();
        assertThat(said.code()).isNotZero();
        assertThat(said.text()).contains("Signature Verification Failure");
    }

    @Test
    void an_altered_tile_is_found() throws Exception {
        prove(17, 256);
        Path bundle = folder.resolve("tiles/tile/entries/001");
        byte[] bytes = Files.readAllBytes(bundle);
        bytes[500] ^= 1;
        Files.write(bundle, bytes);
        assertThat(run().text()).contains("the entries do not give the signed root");
    }
}
