package wickbench.ledger.services;

import java.util.List;
import java.util.function.Supplier;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Packing.Kept;
import wickbench.ledger.papers.Packing.Packed;
import wickbench.ledger.papers.Packing.Sealed;
import wickbench.ledger.papers.Packing.Wanted;

/** Packing what an auditor asks for, and telling how long records are kept. */
final class PackCommands {
    private static final int WANTING = 1;

    private final Packing packing;
    private final Terminal terminal;
    private final Supplier<SiteClock> clock;

    PackCommands(Packing packing, Terminal terminal, Supplier<SiteClock> clock) {
        this.packing = packing;
        this.terminal = terminal;
        this.clock = clock;
    }

    int pack(Wanted wanted) {
        Packed packed =
                packing.pack(wanted, terminal.actorOrRefuse(), terminal.progress(LedgerWords.get("pack.progress")));
        if (terminal.json()) {
            terminal.json(json(packed));
        } else {
            print(packed);
        }
        return packed.missing().isEmpty() ? 0 : WANTING;
    }

    private void print(Packed packed) {
        terminal.line(
                LedgerWords.get("pack.done", packed.folder(), packed.entries(), packed.attachments(), packed.entry()));
        for (Sealed seal : packed.seals()) {
            terminal.line(LedgerWords.get(
                    "pack.seal",
                    seal.checkpoint().station(),
                    seal.checkpoint().size(),
                    seal.checkpoint().root(),
                    seal.fingerprint()));
        }
        packed.missing().forEach(hash -> terminal.line(LedgerWords.get("pack.missing", hash)));
        terminal.line(LedgerWords.get("pack.verify", packed.folder()));
    }

    private static Json json(Packed packed) {
        return Json.object()
                .with("entry", packed.entry().toString())
                .with("folder", packed.folder().toString())
                .with("entries", packed.entries())
                .with("attachments", packed.attachments())
                .with(
                        "seals",
                        Json.array(packed.seals().stream()
                                .map(seal -> seal.checkpoint()
                                        .json()
                                        .with("fingerprint", seal.fingerprint().hex()))
                                .toList()))
                .with(
                        "missing",
                        Json.texts(packed.missing().stream().map(Hash::hex).toList()));
    }

    int kept() {
        List<Kept> kept = packing.kept(terminal.progress(LedgerWords.get("pack.progress")));
        if (terminal.json()) {
            terminal.json(Json.array(kept.stream().map(Kept::json).toList()));
            return 0;
        }
        SiteClock times = clock.get();
        terminal.table(
                List.of("records", "entries", "oldest", "years", "until").stream()
                        .map(column -> LedgerWords.get("kept.column." + column))
                        .toList(),
                kept.stream().map(each -> row(each, times)).toList());
        terminal.line(LedgerWords.get("kept.source"));
        return 0;
    }

    private static List<String> row(Kept each, SiteClock clock) {
        String inUse = each.entries() > 0 ? LedgerWords.get("kept.in-use", each.years()) : "";
        return List.of(
                LedgerWords.get("kept." + each.records()),
                String.valueOf(each.entries()),
                each.oldest().map(clock::minute).orElse(""),
                String.valueOf(each.years()),
                each.until().map(clock::minute).orElse(inUse));
    }
}
