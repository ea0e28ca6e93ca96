package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import wickbench.proof.Frontier;
import wickbench.proof.OpenKey;
import wickbench.proof.TreeHash;

/** What somebody without a station's key makes of its files: all hashes fit, and the signatures are of another key. */
final class Forged {
    private static final StationKey KEY = StationKey.fromSeed(new byte[OpenKey.BYTES]);

    private Forged() {}

    /** Returns a checkpoint like this one, signed by somebody else. */
    static Seal seal(Seal seal, StationFolder of) {
        return Seal.sign(KEY, of.station(), seal.startingPoint(), seal.offset());
    }

    /** Ends a journal at its last note, changes what that says, and signs all of it. */
    static void history(StationFolder files) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(files.segment(0)));
        while (!lines.get(lines.size() - 1).contains("rinse")) {
            lines.remove(lines.size() - 1);
        }
        lines.add(lines.remove(lines.size() - 1).replace("rinse", "Rinse"));
        Frontier frontier = new Frontier();
        TreeHash hash = new TreeHash();
        lines.forEach(line -> frontier.add(hash.leaf(line.getBytes(StandardCharsets.UTF_8))));
        Files.writeString(files.segment(0), String.join("\n", lines) + "\n");
        Seal seal = Seal.sign(KEY, files.station(), frontier, Files.size(files.segment(0)));
        Files.writeString(files.checkpoints(), seal.line() + "\n");
        Files.writeString(files.note(), seal.note());
    }
}
