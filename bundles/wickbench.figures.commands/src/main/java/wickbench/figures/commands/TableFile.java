package wickbench.figures.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.figures.sums.TableText;

/** Reads the file of a table. */
final class TableFile {
    private TableFile() {}

    static TableText read(Path file) {
        try {
            if (Files.size(file) > TableText.LARGEST_BYTES) {
                throw new BadInput(Complaint.of(
                        file.getFileName().toString(), FiguresWords.get("table.large", TableText.LARGEST_BYTES)));
            }
            return TableText.of(file.getFileName().toString(), Files.readAllBytes(file));
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), FiguresWords.get("table.unreadable", FileTrouble.of(e))));
        }
    }
}
