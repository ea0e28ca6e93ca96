package wickbench.attachments;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.AttachmentState;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.Picture;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.words.Words;

/** Shows attachments to people and to machines. */
final class AttachPrint {
    private final Attachments attachments;
    private final Terminal terminal;
    private final Words words;

    AttachPrint(Attachments attachments, Terminal terminal, Words words) {
        this.attachments = attachments;
        this.terminal = terminal;
        this.words = words;
    }

    void list(List<Attachment> shown) {
        if (terminal.json()) {
            terminal.json(Json.array(shown.stream().map(this::json).toList()));
        } else if (shown.isEmpty()) {
            terminal.line(words.get("list.none"));
        } else {
            terminal.table(
                    List.of(
                            words.get("list.name"),
                            words.get("list.type"),
                            words.get("list.size"),
                            words.get("list.found"),
                            words.get("list.sha256")),
                    shown.stream().map(this::row).toList());
        }
    }

    void states(Map<Hash, AttachmentState> states) {
        if (terminal.json()) {
            terminal.json(Json.array(states.entrySet().stream()
                    .map(each -> Json.object()
                            .with("sha256", each.getKey().hex())
                            .with("state", each.getValue().code()))
                    .toList()));
            return;
        }
        states.forEach((content, state) -> {
            if (state != AttachmentState.WHOLE) {
                terminal.line(words.get("state." + state.code()) + ": " + content);
                attachments
                        .with(content)
                        .forEach(each -> terminal.line("  " + words.get("state.about", each.name(), each.about())));
            }
        });
        long whole =
                states.values().stream().filter(AttachmentState.WHOLE::equals).count();
        terminal.line(words.get("verified", whole, states.size()));
    }

    private List<String> row(Attachment each) {
        return List.of(
                each.name().value(),
                each.type().code(),
                String.valueOf(each.size()),
                found(each),
                each.content().hex());
    }

    /** Says what a picture's header says, or what is wrong with the file. */
    private String found(Attachment each) {
        try {
            return attachments.picture(each.content()).map(this::text).orElseGet(() -> words.get("state.whole"));
        } catch (Refusal e) {
            return words.get(e.code().replace("attachment.", "state."));
        }
    }

    private String text(Picture picture) {
        String size = words.get("picture.size", picture.width(), picture.height());
        String turned = picture.orientation() == 1 ? "" : ", " + words.get("picture.turned");
        return size
                + turned
                + picture.unreadable().map(why -> ", " + words.get(why)).orElse("");
    }

    private Json.Obj json(Attachment each) {
        Json.Obj told = Json.object()
                .with("entry", each.entry().toString())
                .with("sha256", each.content().hex())
                .with("size", each.size())
                .with("type", each.type().code())
                .with("name", each.name().value())
                .with("about", each.about().toString())
                .with("by", each.by().value())
                .with("at", each.at().toString());
        try {
            Optional<Picture> picture = attachments.picture(each.content());
            return told.with("state", AttachmentState.WHOLE.code())
                    .withOptional("picture", picture.map(AttachPrint::json));
        } catch (Refusal e) {
            return told.with("state", e.code().replace("attachment.", ""));
        }
    }

    private static Json.Obj json(Picture picture) {
        return Json.object()
                .with("width", picture.width())
                .with("height", picture.height())
                .with("orientation", picture.orientation())
                .with("bits", picture.bits())
                .withText("unreadable", picture.unreadable());
    }
}
