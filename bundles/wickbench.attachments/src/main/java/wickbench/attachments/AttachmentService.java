package wickbench.attachments;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.AttachmentState;
import wickbench.api.attachment.Attachments;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.Picture;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.words.Words;
import wickbench.attachments.look.FileLook;
import wickbench.attachments.look.Look;

/** The attachments of this home. The file goes first: an entry must never name a file that was not there. */
@Component
public final class AttachmentService implements Attachments {
    private static final long BYTES_PER_MIB = 1L << 20;

    private final Home home;
    private final Journal journal;
    private final Index index;
    private final Words words = Words.of(AttachmentService.class, "attachments");

    @Activate
    public AttachmentService(@Reference Home home, @Reference Journal journal, @Reference Index index) {
        this.home = home;
        this.journal = journal;
        this.index = index;
    }

    @Override
    public synchronized Kept add(InputStream content, String name, EntryRef about, PersonId by) {
        FileName proper = FileName.of(name);
        if (journal.entry(about).isEmpty()) {
            throw bad(about.toString(), "attachment.no-entry");
        }
        return aside(content, name, (storage, aside) -> keep(storage, aside, proper, about, by));
    }

    @Override
    public Looked look(InputStream content, String name) {
        FileName proper = FileName.of(name);
        return aside(content, name, (storage, aside) -> {
            Look.Known known = known(aside, proper);
            return new Looked(aside.content(), known.type(), known.picture());
        });
    }

    /** Does something with the bytes of a file, written aside for so long. */
    @FunctionalInterface
    private interface Work<T> {
        T with(Storage storage, Storage.Aside aside) throws IOException;
    }

    private <T> T aside(InputStream content, String name, Work<T> work) {
        Storage storage = storage();
        try {
            Storage.Aside aside = storage.aside(content, MOST_BYTES);
            try {
                return work.with(storage, aside);
            } finally {
                storage.drop(aside);
            }
        } catch (Storage.TooLarge e) {
            throw bad(name, "attachment.too-large", MOST_BYTES / BYTES_PER_MIB);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Look.Known known(Storage.Aside aside, FileName name) throws IOException {
        Look look = FileLook.at(aside.path(), name);
        if (look instanceof Look.Unreadable why) {
            throw bad(name.value(), "unreadable." + why.reason());
        }
        return (Look.Known) look;
    }

    private Kept keep(Storage storage, Storage.Aside aside, FileName name, EntryRef about, PersonId by)
            throws IOException {
        Look.Known known = known(aside, name);
        storage.keep(aside);
        Added added = new Added(aside.content(), aside.size(), known.type(), name, about);
        UUID id = Draft.contentId(Added.KIND, added.body());
        boolean news = index.find(id).isEmpty();
        if (news) {
            journal.append(List.of(new Draft(id, by, Added.KIND, Added.VERSION, added.body())));
        }
        EntryRef entry = index.find(id).orElseThrow();
        Attachment kept = of(about).stream()
                .filter(each -> each.entry().equals(entry))
                .findFirst()
                .orElseThrow();
        return new Kept(kept, news);
    }

    @Override
    public List<Attachment> of(EntryRef about) {
        return index.read(AttachmentView.NAME, rows -> AttachmentView.about(rows, about));
    }

    @Override
    public List<Attachment> with(Hash content) {
        return index.read(AttachmentView.NAME, rows -> AttachmentView.with(rows, content));
    }

    @Override
    public InputStream open(Hash content) {
        Storage storage = storage();
        refuseUnknown(content);
        if (!storage.isThere(content)) {
            throw new Refusal("attachment.missing", words.get("attachment.missing", content, storage.file(content)));
        }
        try {
            return storage.proved(content)
                    .orElseThrow(() -> new Refusal(
                            "attachment.altered", words.get("attachment.altered", content, storage.file(content))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Optional<Picture> picture(Hash content) {
        try {
            open(content).close();
            Look look = FileLook.at(storage().file(content), FileName.of(""));
            return look instanceof Look.Known known ? known.picture() : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Map<Hash, AttachmentState> verify(Progress progress) {
        List<Hash> contents = index.read(AttachmentView.NAME, AttachmentView::contents);
        Storage storage = storage();
        Map<Hash, AttachmentState> states = new LinkedHashMap<>();
        for (Hash content : contents) {
            states.put(content, state(storage, content));
            progress.at(states.size(), contents.size());
        }
        return states;
    }

    private static AttachmentState state(Storage storage, Hash content) {
        try {
            if (!storage.isThere(content)) {
                return AttachmentState.MISSING;
            }
            return storage.isWhole(content) ? AttachmentState.WHOLE : AttachmentState.ALTERED;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void refuseUnknown(Hash content) {
        if (with(content).isEmpty()) {
            throw new Refusal("attachment.unknown", words.get("attachment.unknown", content));
        }
    }

    private BadInput bad(String source, String key, Object... values) {
        return new BadInput(Complaint.of(source, words.get(key, values)));
    }

    private Storage storage() {
        return new Storage(home.folder());
    }
}
