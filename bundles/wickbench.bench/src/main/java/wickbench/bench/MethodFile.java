package wickbench.bench;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method;
import wickbench.reading.MethodJson;

/** Reads a method from a file. */
final class MethodFile {
    private static final long LARGEST = 1 << 20;

    private MethodFile() {}

    static Checked<Method> read(Path file) {
        String name = file.getFileName().toString();
        try {
            if (Files.size(file) > LARGEST) {
                return Checked.bad(Complaint.of(name, BenchWords.get("method.large", LARGEST)));
            }
            return MethodJson.read(name, Files.readString(file));
        } catch (MalformedInputException e) {
            return Checked.bad(Complaint.of(name, BenchWords.get("method.not-utf8")));
        } catch (IOException e) {
            return Checked.bad(Complaint.of(file.toString(), BenchWords.get("sheet.unreadable", FileTrouble.of(e))));
        }
    }
}
