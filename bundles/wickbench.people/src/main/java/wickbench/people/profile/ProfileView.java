package wickbench.people.profile;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.Signature;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Profiles.IssuedProfile;

/**
 * Every profile that was issued, and which of several was chosen where stations had issued them without knowing of one another.
 *
 * <p>A choice is a row of its own that names the row of the profile, which may come later.
 */
@Component
public final class ProfileView implements IndexView {
    static final String NAME = "profile";
    static final String ISSUED = "profile.issued";
    static final int VERSION = 1;
    /** The site has one, so there is one subject to decide upon. */
    static final String SUBJECT = "profile";

    @Activate
    public ProfileView() {}

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public int version() {
        return 2;
    }

    @Override
    public List<String> tables() {
        return List.of("create table profile (station varchar(32) not null, seq bigint not null,"
                + " from_at timestamp(3) with time zone not null, issued_by varchar(32) not null, signed boolean not null,"
                + " body character varying, stands_station varchar(32), stands_seq bigint,"
                + " primary key (station, seq))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        return Set.of();
    }

    /** Until somebody settles it, the later one is in force. */
    @Override
    public Optional<Decision> decision(Entry entry) {
        return entry.is(ISSUED, VERSION)
                ? Optional.of(new Decision(SUBJECT, profile(entry).canonical()))
                : Optional.empty();
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(ISSUED, VERSION)) {
            write(entry, Optional.of(profile(entry).canonical()), Optional.empty(), rows);
        } else {
            Settlement.of(entry)
                    .filter(settled -> settled.subject().equals(SUBJECT))
                    .ifPresent(settled -> write(entry, Optional.empty(), Optional.of(settled.stands()), rows));
        }
    }

    private static Json.Obj profile(Entry entry) {
        return entry.body()
                .get("profile")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .orElseThrow(() -> new IllegalStateException(entry.ref() + " issues no profile"));
    }

    private static void write(Entry entry, Optional<String> body, Optional<EntryRef> stands, Rows rows) {
        rows.write(
                "insert into profile (station, seq, from_at, issued_by, signed, body, stands_station, stands_seq)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.at(),
                entry.by().value(),
                Signature.under(entry).signed(),
                body,
                stands.map(ref -> ref.station().value()),
                stands.map(EntryRef::seq));
    }

    /** Returns all, oldest first. */
    static List<IssuedProfile> all(Rows rows) {
        return rows.read("""
                select p.station, p.seq, p.from_at, p.issued_by, p.signed, coalesce(p.body, chosen.body) as text
                from profile p
                left join profile chosen on chosen.station = p.stands_station and chosen.seq = p.stands_seq
                where coalesce(p.body, chosen.body) is not null
                order by p.from_at, p.station, p.seq""", ProfileView::issued);
    }

    private static IssuedProfile issued(Row row) {
        EntryRef ref = new EntryRef(new StationId(row.text("station")), row.whole("seq"));
        return new IssuedProfile(
                ProfileJson.read(ref.toString(), row.text("text")).orRefuse(),
                ref,
                row.instant("from_at"),
                new PersonId(row.text("issued_by")),
                row.flag("signed"));
    }
}
