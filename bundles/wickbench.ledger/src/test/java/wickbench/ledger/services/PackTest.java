package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.Signature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.progress.Progress;
import wickbench.attachments.AttachmentService;
import wickbench.ledger.Filter;
import wickbench.ledger.acts.Move;
import wickbench.ledger.papers.Packing.Packed;
import wickbench.ledger.papers.Packing.Wanted;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;
import wickbench.testing.Recipe;
import wickbench.testing.Recipe.Said;
import wickbench.testing.Schemas;

/** An audit pack is verified by the page for auditors alone, and whatever was done to it is found. */
class PackTest {
    private static final byte[] NOTE = "what was seen at the hopper".getBytes(StandardCharsets.UTF_8);
    private static final Filter BATCH = Filter.ALL.withBatch(Optional.of(Quality.BATCH));

    @TempDir
    Path folder;

    private Quality quality;
    private Entry positive;
    private Path pack;

    @BeforeEach
    void aBatchWithAStory() throws IOException {
        quality = Quality.tested();
        positive = quality.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200));
        quality.reviewing.review(List.of(positive.id()), Optional.empty(), Quality.REVIEWER, Optional.empty());
        quality.decide(positive.id(), Move.REPEAT, Quality.REVIEWER);
        new AttachmentService(quality.site.home, quality.site.journal, quality.site.index)
                .add(new ByteArrayInputStream(NOTE), "note.txt", positive.ref(), Quality.TESTER);
        pack = folder.resolve("pack");
    }

    @AfterEach
    void close() {
        quality.close();
    }

    private Packed packed() {
        return quality.doors.packing().pack(new Wanted(BATCH, false, pack), Quality.REVIEWER, Progress.NONE);
    }

    private Said verified() throws Exception {
        return Recipe.run(pack, "An audit pack");
    }

    @Test
    @Meets({"21 CFR 11.10(b)", "EU GMP Annex 11 17"})
    void a_stranger_verifies_it_with_python_and_openssl_alone() throws Exception {
        Packed packed = packed();
        Said said = verified();
        assertThat(said.code()).as(said.text()).isZero();
        Hash fingerprint =
                quality.site.journal.keyFingerprint(positive.ref().station()).orElseThrow();
        assertThat(said.lines())
                .contains("Signature Verified Successfully", fingerprint + "  -", "wickbench.invalid/bench-1")
                .contains("attachments that are not in the pack: 0")
                .anyMatch(line -> line.startsWith(packed.entries() + " entries and 1 attachments, packed by rui at ")
                        && line.endsWith(": batch B-7"))
                .anyMatch(line -> line.startsWith(packed.entries() + " entries are under root "));
        assertThat(packed.seals())
                .singleElement()
                .satisfies(seal -> assertThat(seal.fingerprint()).isEqualTo(fingerprint));
    }

    @Test
    void what_belongs_to_the_results_is_in_it_and_what_does_not_is_not() throws Exception {
        UUID other = quality.site.record(Strips.Plain.negative("Z-1").judged()).id();
        packed();
        String entries = Files.readString(pack.resolve("entries/bench-1.jsonl"));
        Stream.of(
                        "station.founded",
                        "reading.recorded",
                        "reading.reviewed",
                        "action.decided",
                        "owed.ordered",
                        "attachment.added",
                        "release.planned")
                .forEach(kind -> assertThat(entries).contains("\\\"kind\\\":\\\"" + kind + "\\\""));
        assertThat(entries).contains("S-1", "S-3").doesNotContain(other.toString());
        assertThat(pack.resolve("attachments/" + Hash.ofContent(NOTE) + ".txt")).hasBinaryContent(NOTE);
        assertThat(pack.resolve("reports/results.pdf")).isNotEmptyFile();
        Schemas schemas = Schemas.published();
        assertThat(schemas.errors("pack-1.schema.json", Files.readString(pack.resolve("pack.json"))))
                .isEmpty();
        for (String line : entries.lines().toList()) {
            assertThat(schemas.errors("proof-1.schema.json", line)).isEmpty();
        }
    }

    @Test
    void the_entry_about_it_is_as_its_schema_says() throws Exception {
        Entry made = quality.site.journal.entry(packed().entry()).orElseThrow();
        Schemas schemas = Schemas.published();
        assertThat(schemas.errors("pack.made-1.schema.json", made.body().canonical()))
                .isEmpty();
        assertThat(schemas.errors("pack.made-1.schema.json", "{\"of\":\"\"}")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "entries/bench-1.jsonl",
                "attachments",
                "pack.json",
                "reports/results.pdf",
                "SHA256SUMS",
                "seal.jsonl"
            })
    void one_flipped_bit_is_found(String name) throws Exception {
        packed();
        Path file = pack.resolve(name);
        if (Files.isDirectory(file)) {
            try (Stream<Path> inside = Files.list(file)) {
                file = inside.findFirst().orElseThrow();
            }
        }
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        assertThat(verified().code()).isNotZero();
    }

    @Test
    void a_missing_entry_is_found_even_when_the_list_of_files_was_made_to_fit() throws Exception {
        packed();
        Path entries = pack.resolve("entries/bench-1.jsonl");
        List<String> lines = new ArrayList<>(Files.readAllLines(entries));
        lines.removeIf(line -> line.contains("S-3"));
        Files.write(entries, lines);
        listAnew();
        Said said = verified();
        assertThat(said.code()).isNotZero();
        assertThat(said.text()).contains("these are not the files that were packed");
    }

    @Test
    void an_entry_made_to_say_otherwise_is_found_even_when_the_list_of_files_was_made_to_fit() throws Exception {
        packed();
        Path entries = pack.resolve("entries/bench-1.jsonl");
        Files.writeString(entries, Files.readString(entries).replace("S-3", "S-4"));
        listAnew();
        Said said = verified();
        assertThat(said.code()).isNotZero();
        assertThat(said.text()).contains("the entry is not under the root");
    }

    @Test
    void a_foreign_key_signs_everything_and_is_known_by_its_fingerprint() throws Exception {
        packed();
        KeyPair foreign = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        for (Path file : List.of(pack.resolve("entries/bench-1.jsonl"), pack.resolve("seal.jsonl"))) {
            List<String> forged = new ArrayList<>();
            for (String line : Files.readAllLines(file)) {
                forged.add(signedBy(foreign, line, true));
            }
            Files.write(file, forged);
        }
        listAnew();
        Said said = verified();
        // the forger also names the key in the checkpoint; all that the page can show is whose it is
        assertThat(said.lines()).contains("Signature Verified Successfully");
        Hash ours =
                quality.site.journal.keyFingerprint(positive.ref().station()).orElseThrow();
        assertThat(said.lines()).doesNotContain(ours + "  -").contains(Hash.ofContent(raw(foreign)) + "  -");
        // and the site's own entry about the pack does not fit it
        assertThat(said.code()).isNotZero();
    }

    @Test
    void a_checkpoint_signed_by_another_than_the_key_is_found() throws Exception {
        packed();
        KeyPair foreign = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        Path entries = pack.resolve("entries/bench-1.jsonl");
        List<String> forged = new ArrayList<>(Files.readAllLines(entries));
        forged.set(0, signedBy(foreign, forged.get(0), false));
        Files.write(entries, forged);
        listAnew();
        Said said = verified();
        assertThat(said.code()).isNotZero();
        assertThat(said.text()).contains("Signature Verification Failure");
    }

    /** Signs the checkpoint of a proof anew, as somebody could who has no key of the site. */
    private static String signedBy(KeyPair key, String line, boolean andSaySo) throws Exception {
        var proof = new com.fasterxml.jackson.databind.ObjectMapper().readTree(line);
        var checkpoint = (com.fasterxml.jackson.databind.node.ObjectNode) proof.get("checkpoint");
        String note = checkpoint.get("note").asText();
        String text = note.substring(0, note.indexOf("\n\n") + 1);
        Signature signer = Signature.getInstance("Ed25519");
        signer.initSign(key.getPrivate());
        signer.update(text.getBytes(StandardCharsets.UTF_8));
        byte[] signature = new byte[68];
        System.arraycopy(signer.sign(), 0, signature, 4, 64);
        String origin = text.lines().findFirst().orElseThrow();
        byte[] named = andSaySo
                ? raw(key)
                : Base64.getDecoder().decode(proof.get("public_key").asText());
        System.arraycopy(keyId(origin, named), 0, signature, 0, 4);
        checkpoint.put(
                "note", text + "\n\u2014 " + origin + " " + Base64.getEncoder().encodeToString(signature) + "\n");
        if (andSaySo) {
            ((com.fasterxml.jackson.databind.node.ObjectNode) proof)
                    .put("public_key", Base64.getEncoder().encodeToString(raw(key)));
        }
        return proof.toString();
    }

    private static byte[] keyId(String name, byte[] key) {
        byte[] head = (name + "\n\u0001").getBytes(StandardCharsets.UTF_8);
        byte[] all = Arrays.copyOf(head, head.length + key.length);
        System.arraycopy(key, 0, all, head.length, key.length);
        return Arrays.copyOf(Hash.ofContent(all).bytes(), 4);
    }

    private static byte[] raw(KeyPair key) {
        byte[] encoded = key.getPublic().getEncoded();
        return Arrays.copyOfRange(encoded, encoded.length - 32, encoded.length);
    }

    private void listAnew() throws IOException {
        StringBuilder sums = new StringBuilder();
        for (String line : Files.readAllLines(pack.resolve("SHA256SUMS"))) {
            String name = line.substring(66);
            sums.append(Hash.ofContent(Files.readAllBytes(pack.resolve(name))))
                    .append("  ")
                    .append(name)
                    .append('\n');
        }
        Files.writeString(pack.resolve("SHA256SUMS"), sums);
    }

    @Test
    void half_a_pack_is_never_there_and_what_is_there_is_never_written_over() throws Exception {
        long before = quality.entries();
        assertThatThrownBy(() -> quality.doors
                        .packing()
                        .pack(new Wanted(BATCH, false, pack), Quality.REVIEWER, (done, all) -> done < 3))
                .isInstanceOf(Refusal.class)
                .hasMessage("Stopped; nothing was packed.");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).isEmpty();
        }
        Files.createDirectory(pack);
        Files.writeString(pack.resolve("mine.txt"), "mine");
        assertThat(quality.refused(this::packed)).isEqualTo("pack.folder");
        assertThat(pack.resolve("mine.txt")).hasContent("mine");
        assertThat(quality.refused(() -> quality.doors
                        .packing()
                        .pack(
                                new Wanted(Filter.ALL.withBatch(Optional.of("B-8")), false, folder.resolve("none")),
                                Quality.REVIEWER,
                                Progress.NONE)))
                .isEqualTo("pack.nothing");
        assertThat(quality.entries()).isEqualTo(before);
    }

    @Test
    void an_attachment_that_was_lost_is_told() throws Exception {
        Path kept;
        try (Stream<Path> files = Files.walk(quality.site.home.folder().resolve("attachments"))) {
            kept = files.filter(Files::isRegularFile).findFirst().orElseThrow();
        }
        Files.delete(kept);
        HeardTerminal heard = run("pack", "--batch", Quality.BATCH, "--out", pack.toString());
        assertThat(heard.lines())
                .contains("MISSING: the attachment " + Hash.ofContent(NOTE) + " is not here as it was added.");
        Said said = verified();
        assertThat(said.code()).as(said.text()).isZero();
        assertThat(said.lines()).contains("attachments that are not in the pack: 1");
    }

    @Test
    void everything_is_packed_for_an_archive() throws Exception {
        long all = quality.entries();
        HeardTerminal heard = run("pack", "--everything", "--out", pack.toString());
        assertThat(heard.lines()).anyMatch(line -> line.contains("; entries: " + all + ", attachments: 1."));
        Said said = verified();
        assertThat(said.code()).as(said.text()).isZero();
    }

    @Test
    @Meets("21 CFR 117.315(a)(1), (b)")
    void each_sort_of_records_is_kept_for_two_years_at_least() {
        HeardTerminal heard = run("kept");
        assertThat(heard.lines())
                .anyMatch(line -> line.startsWith("results, reviews, corrections | ") && line.contains(" | 2 | "))
                .anyMatch(line -> line.contains("The program itself deletes nothing."));
    }

    private HeardTerminal run(String... arguments) {
        HeardTerminal heard = HeardTerminal.of(Quality.REVIEWER, false);
        Object command = new LedgerCommand(
                quality.site.results,
                quality.doors,
                new ResultExport(quality.site.results, List.of()),
                heard,
                new Print(heard, quality.site.journal, quality.site.site, new PersonNames(List.of())),
                new ActsPrint(heard, quality.site.site, quality.site.home.clock()));
        assertThat(new CommandLine(command).execute(arguments)).isBetween(0, 1);
        return heard;
    }
}
