package wickbench.ledger.pack;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.Attachments;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;

/** Copies what was attached to entries, each file once; what is not there as it was added is told. */
final class PackedFiles {
    private final List<Attachments> attachments;
    private final PackFiles files;
    private final List<Json.Obj> list = new ArrayList<>();
    private final List<Hash> missing = new ArrayList<>();
    private final Set<Hash> seen = new HashSet<>();

    /** @param attachments one, or none where files are not kept */
    PackedFiles(List<Attachments> attachments, PackFiles files) {
        this.attachments = attachments;
        this.files = files;
    }

    void of(Iterable<EntryRef> entries) throws IOException {
        for (Attachments port : attachments) {
            for (EntryRef entry : entries) {
                for (Attachment each : port.of(entry)) {
                    copy(port, each);
                }
            }
        }
    }

    private void copy(Attachments port, Attachment each) throws IOException {
        String ending = each.name().ending();
        String file = "attachments/" + each.content() + (ending.isEmpty() ? "" : "." + ending);
        if (seen.add(each.content()) && !copied(port, each, file)) {
            missing.add(each.content());
        }
        if (!missing.contains(each.content())) {
            list.add(Json.object()
                    .with("file", file)
                    .with("sha256", each.content().hex())
                    .with("name", each.name().value())
                    .with("about", each.about().toString()));
        }
    }

    private boolean copied(Attachments port, Attachment each, String file) throws IOException {
        try {
            files.add(file, port.open(each.content()));
            return true;
        } catch (Refusal e) {
            // a pack without a file that was lost says so; no pack at all would say nothing
            return false;
        }
    }

    List<Json.Obj> list() {
        return list;
    }

    List<Hash> missing() {
        return missing;
    }

    long copied() {
        return (long) seen.size() - missing.size();
    }
}
