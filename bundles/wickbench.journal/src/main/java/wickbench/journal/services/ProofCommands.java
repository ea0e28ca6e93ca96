package wickbench.journal.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** Proving, comparing and exporting on the command line. */
final class ProofCommands {
    private final Journal journal;
    private final Proofs proofs;
    private final Words words;
    private final Terminal terminal;

    ProofCommands(Journal journal, Proofs proofs, Words words, Terminal terminal) {
        this.journal = journal;
        this.proofs = proofs;
        this.words = words;
        this.terminal = terminal;
    }

    int prove(String name, Optional<Long> against) {
        EntryProof proof = proofs.prove(
                new EntryName(journal, words).find(name),
                against.map(OptionalLong::of).orElse(OptionalLong.empty()));
        if (terminal.json()) {
            terminal.json(proof.json());
        } else {
            print(proof);
        }
        return 0;
    }

    private void print(EntryProof proof) {
        line("proof.entry", proof.entry(), proof.leaf());
        terminal.line(proof.line());
        line("proof.tree", proof.size(), proof.root());
        proof.inclusion().forEach(hash -> terminal.line("  " + hash));
        if (proof.size() < proof.checkpoint().size()) {
            line("proof.newer", proof.checkpoint().size(), proof.checkpoint().root());
            proof.consistency().forEach(hash -> terminal.line("  " + hash));
        }
        line("proof.key", proof.publicKey());
        proof.checkpoint().note().lines().forEach(terminal::line);
    }

    /**
     * @param given the words of the command line
     * @param file the first of them as a file
     */
    int compare(List<String> given, Path file) {
        Comparison comparison = proofs.compare(new CheckpointText(words).read(given, file));
        if (comparison.result() == Comparison.Result.UNREADABLE) {
            throw new BadInput(Complaint.of("CHECKPOINT", comparison.text()));
        }
        if (terminal.json()) {
            terminal.json(JournalJson.comparison(comparison));
        } else {
            terminal.line(comparison.text());
        }
        return comparison.holds() ? 0 : 1;
    }

    int export(Path folder, Optional<String> named) {
        StationId station = named.map(ProofCommands::station)
                .or(() -> journal.stations().stream().findFirst())
                .orElseThrow(() -> new BadInput(Complaint.of("DIR", words.get("status.unfounded"))));
        Checkpoint checkpoint = proofs.exportTiles(station, folder, terminal.progress(words.get("export.progress")));
        if (terminal.json()) {
            terminal.json(Json.object()
                    .with("folder", folder.toString())
                    .with("checkpoint", JournalJson.checkpoint(Optional.of(checkpoint))));
        } else {
            line("export.done", checkpoint.size(), folder);
        }
        return 0;
    }

    private static StationId station(String name) {
        try {
            return new StationId(name);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("--station", e.getMessage()));
        }
    }

    private void line(String key, Object... values) {
        terminal.line(words.get(key, values));
    }
}
