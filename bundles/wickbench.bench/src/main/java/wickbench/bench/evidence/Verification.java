package wickbench.bench.evidence;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;

/**
 * The body of {@code method.verified}: one version of a method was shown to work for a food, on a surface, after a cleaner.
 *
 * @param food for example milk chocolate; at least one of food, surface and cleaner is stated
 * @param surface for example stainless steel, scratched
 * @param cleaner what the surface was cleaned with, which may hide protein from the strip
 * @param evidence the entries that show it: sums that were kept, files that were attached
 * @param remark in the site's words, such as where a report on paper lies; needed where no entry is named
 */
public record Verification(
        MethodRef method,
        Optional<String> food,
        Optional<String> surface,
        Optional<String> cleaner,
        List<EntryRef> evidence,
        Optional<String> remark) {
    public static final String KIND = "method.verified";
    public static final int VERSION = 1;

    public Verification {
        evidence = List.copyOf(evidence);
    }

    /** Returns food, surface and cleaner in one text. */
    public String what() {
        return Stream.of(food, surface, cleaner).flatMap(Optional::stream).collect(Collectors.joining(", "));
    }

    /** Writes the body of the entry. */
    public Json.Obj body() {
        return Json.object()
                .with("method", method.id().value())
                .with("version", method.version())
                .withText("food", food)
                .withText("surface", surface)
                .withText("cleaner", cleaner)
                .withOptional(
                        "evidence",
                        Optional.of(evidence)
                                .filter(some -> !some.isEmpty())
                                .map(some -> Json.texts(
                                        some.stream().map(EntryRef::toString).toList())))
                .withText("remark", remark);
    }

    /** Reads the body of an entry. */
    public static Checked<Verification> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<MethodId> id = fields.optional("method", MethodId::new);
        long version = fields.whole("version");
        Optional<String> food = fields.optionalText("food");
        Optional<String> surface = fields.optionalText("surface");
        Optional<String> cleaner = fields.optionalText("cleaner");
        List<String> evidence = fields.texts("evidence");
        Optional<String> remark = fields.optionalText("remark");
        fields.has(Signature.MEMBER);
        if (id.isEmpty() && !fields.has("method")) {
            fields.complain("method", "is missing; expected the id of a method");
        }
        return fields.finish(() -> new Verification(
                new MethodRef(id.orElseThrow(), Math.toIntExact(version)),
                food,
                surface,
                cleaner,
                evidence.stream().map(EntryRef::parse).toList(),
                remark));
    }
}
