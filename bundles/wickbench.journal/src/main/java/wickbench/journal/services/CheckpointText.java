package wickbench.journal.services;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.words.Words;

/** A checkpoint as people hand it over: in a file, as its text, or typed in three words. */
record CheckpointText(Words words) {
    private static final int LONGEST = 100_000;

    /**
     * Returns what a file holds where one is named, else the words themselves.
     *
     * @param given the words of the command line
     * @param file the first of them as a file
     */
    String read(List<String> given, Path file) {
        String text = String.join(" ", given);
        if (given.size() > 1 || text.contains("\n")) {
            return text;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new BadInput(Complaint.of(text, words.get("compare.file")));
        }
    }
}
