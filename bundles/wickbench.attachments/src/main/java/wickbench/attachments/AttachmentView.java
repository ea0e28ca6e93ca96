package wickbench.attachments;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.attachment.Attachment;
import wickbench.api.attachment.FileName;
import wickbench.api.attachment.MediaType;
import wickbench.api.index.IndexView;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;

/** Which file was added to which entry. */
@Component
public final class AttachmentView implements IndexView {
    static final String NAME = "attachments";
    private static final String ORDER = " order by at, station, seq";

    @Activate
    public AttachmentView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 1;
    }

    @Override
    public List<String> tables() {
        return List.of(
                "create table attachment (station varchar(32) not null, seq bigint not null, content char(64) not null,"
                        + " size bigint not null, type varchar(64) not null, name varchar(255) not null,"
                        + " about_station varchar(32) not null, about_seq bigint not null,"
                        + " added_by varchar(32) not null, at timestamp(3) with time zone not null,"
                        + " primary key (station, seq))",
                "create index by_about on attachment (about_station, about_seq)",
                "create index by_content on attachment (content)");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(Added.KIND, Added.VERSION)) {
            Added added = Added.read(entry.ref().toString(), entry.body()).orRefuse();
            rows.write(
                    "insert into attachment (station, seq, content, size, type, name, about_station, about_seq, added_by, at)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    added.content().hex(),
                    added.size(),
                    added.type().code(),
                    added.name().value(),
                    added.about().station().value(),
                    added.about().seq(),
                    entry.by().value(),
                    entry.at());
        }
    }

    static List<Attachment> about(Rows rows, EntryRef about) {
        return rows.read(
                "select * from attachment where about_station = ? and about_seq = ?" + ORDER,
                AttachmentView::attachment,
                about.station().value(),
                about.seq());
    }

    static List<Attachment> with(Rows rows, Hash content) {
        return rows.read(
                "select * from attachment where content = ?" + ORDER, AttachmentView::attachment, content.hex());
    }

    /** Returns the hashes of all files that entries name, in order. */
    static List<Hash> contents(Rows rows) {
        return rows.read(
                "select distinct content from attachment order by content", row -> new Hash(row.text("content")));
    }

    private static Attachment attachment(Row row) {
        return new Attachment(
                ref(row, "station", "seq"),
                new Hash(row.text("content")),
                row.whole("size"),
                MediaType.of(row.text("type")),
                new FileName(row.text("name")),
                ref(row, "about_station", "about_seq"),
                new PersonId(row.text("added_by")),
                row.instant("at"));
    }

    private static EntryRef ref(Row row, String station, String seq) {
        return new EntryRef(new StationId(row.text(station)), row.whole(seq));
    }
}
