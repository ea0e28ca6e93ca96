package wickbench.attachments;

import java.util.Optional;
import java.util.function.Function;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;
import wickbench.api.check.Checked;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/** The body of {@code attachment.added}; the schema is {@code docs/formats/attachment.added-1.schema.json}. */
record Added(Hash content, long size, MediaType type, FileName name, EntryRef about) {
    static final String KIND = "attachment.added";
    static final int VERSION = 1;

    Json.Obj body() {
        return Json.object()
                .with("sha256", content.hex())
                .with("size", size)
                .with("type", type.code())
                .with("name", name.value())
                .with("about", about.toString());
    }

    static Checked<Added> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        Optional<Hash> content = needed(fields, "sha256", Hash::new);
        long size = fields.whole("size");
        Optional<MediaType> type = needed(fields, "type", MediaType::of);
        Optional<FileName> name = needed(fields, "name", FileName::new);
        Optional<EntryRef> about = needed(fields, "about", EntryRef::parse);
        return fields.finish(() ->
                new Added(content.orElseThrow(), size, type.orElseThrow(), name.orElseThrow(), about.orElseThrow()));
    }

    private static <T> Optional<T> needed(Fields fields, String name, Function<String, T> parse) {
        fields.text(name);
        return fields.optional(name, parse);
    }
}
