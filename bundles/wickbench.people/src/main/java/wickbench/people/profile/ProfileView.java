package wickbench.people.profile;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.Signature;
import wickbench.api.index.IndexView;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profiles.IssuedProfile;

/** Every profile that was issued. */
@Component
public final class ProfileView implements IndexView {
    static final String NAME = "profile";
    static final String ISSUED = "profile.issued";
    static final int VERSION = 1;

    @Activate
    public ProfileView() {}

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
        return List.of("create table profile (station varchar(32) not null, seq bigint not null,"
                + " from_at timestamp(3) with time zone not null, issued_by varchar(32) not null, signed boolean not null,"
                + " body character varying not null, primary key (station, seq))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(ISSUED, VERSION)) {
            Json.Obj profile = entry.body()
                    .get("profile")
                    .filter(Json.Obj.class::isInstance)
                    .map(Json.Obj.class::cast)
                    .orElseThrow(() -> new IllegalStateException(entry.ref() + " issues no profile"));
            rows.write(
                    "insert into profile (station, seq, from_at, issued_by, signed, body) values (?, ?, ?, ?, ?, ?)",
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    entry.at(),
                    entry.by().value(),
                    Signature.under(entry).signed(),
                    profile.canonical());
        }
    }

    /** Returns all, oldest first. */
    static List<IssuedProfile> all(Rows rows) {
        return rows.read("select * from profile order by from_at, station, seq", ProfileView::issued);
    }

    private static IssuedProfile issued(Row row) {
        EntryRef ref = new EntryRef(new StationId(row.text("station")), row.whole("seq"));
        return new IssuedProfile(
                ProfileJson.read(ref.toString(), row.text("body")).orRefuse(),
                ref,
                row.instant("from_at"),
                new PersonId(row.text("issued_by")),
                row.flag("signed"));
    }
}
