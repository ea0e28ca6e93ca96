package wickbench.bench.ui.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.method.Method;
import wickbench.reading.MethodJson;

/**
 * What comes of the fields as they stand.
 *
 * @param wrong what is wrong or missing, by the path, one line each, in the order of the document
 * @param method there when nothing is
 */
record MethodLook(Map<String, String> wrong, Optional<Method> method) {

    /** Judges by the reader of method files, so that the editor can neither allow nor refuse what a file could not. */
    static MethodLook at(MethodText text, int version) {
        MethodDocument.Made made = MethodDocument.of(text, version);
        Checked<Method> read = MethodJson.read(EditorWords.get("source"), made.document());
        Map<String, String> wrong = new LinkedHashMap<>();
        for (Complaint complaint : read.complaints()) {
            wrong.putIfAbsent(complaint.field(), complaint.text());
        }
        // what could not even be read stands in for the complaint that it is missing
        wrong.putAll(made.wrong());
        return new MethodLook(
                wrong,
                wrong.isEmpty() && read instanceof Checked.Good<Method> good
                        ? Optional.of(good.value())
                        : Optional.empty());
    }

    /** Returns what is wrong with the field at a path. */
    Optional<String> of(String path) {
        return Optional.ofNullable(wrong.get(path))
                .or(() -> wrong.entrySet().stream()
                        .filter(each -> Section.near(path, each.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst());
    }
}
