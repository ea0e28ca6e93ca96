package wickbench.training.book;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.authority.Signature;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;

/**
 * What was told of people and rounds, who read which strip when, and which versions of methods came into force.
 *
 * <p>Rows are what entries say and nothing more; states are folded from them when asked for, in an order of their own. So the
 * order in which entries come does not matter.
 */
@Component
public final class TrainingView implements IndexView {
    public static final String NAME = "training";

    private static final String METHOD_ISSUED = "method.issued";
    private static final String METHOD_WITHDRAWN = "method.withdrawn";

    /** Before a person's id and a method's, the subject of decisions on them. */
    private static final String COMPETENCE = "competence:";

    private static final String ALL_METHODS = "*";

    @Activate
    public TrainingView() {}

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
                "create table training_event (station varchar(32) not null, seq bigint not null, id uuid not null,"
                        + " at timestamp(3) with time zone not null, acted_at timestamp(3) with time zone not null,"
                        + " kind varchar(64) not null, person varchar(32), method varchar(40), round varchar(40),"
                        + " written_by varchar(32) not null, signed boolean not null, body character varying not null,"
                        + " primary key (station, seq))",
                "create index event_by_person on training_event (person)",
                "create index event_by_round on training_event (round)",
                "create index event_by_kind on training_event (kind, acted_at)",
                "create table tested (station varchar(32) not null, seq bigint not null, person varchar(32) not null,"
                        + " method varchar(40) not null, taken timestamp(3) with time zone not null,"
                        + " primary key (station, seq))",
                "create index tested_by_person on tested (person, method, taken)",
                "create table issued (station varchar(32) not null, seq bigint not null,"
                        + " at timestamp(3) with time zone not null, method varchar(40) not null, version integer,"
                        + " primary key (station, seq))");
    }

    @Override
    public Set<String> subjects(Entry entry) {
        // a row for each entry, whatever came before or comes after
        return Set.of();
    }

    @Override
    public Optional<Decision> decision(Entry entry) {
        if (entry.v() != Kinds.VERSION) {
            return Optional.empty();
        }
        return switch (entry.kind()) {
            case Kinds.AUTHORISED, Kinds.SUSPENDED, Kinds.RESTORED ->
                Optional.of(new Decision(
                        COMPETENCE + text(entry, "person").orElse("") + ":"
                                + text(entry, "method").orElse(ALL_METHODS),
                        entry.kind()));
            case Kinds.OPENED, Kinds.CLOSED, Kinds.SCORED ->
                Optional.of(new Decision(
                        Kinds.ROUND + text(entry, "round").orElse("") + ":" + entry.kind(),
                        entry.id().toString()));
            default -> Optional.empty();
        };
    }

    @Override
    public void apply(Entry entry, Rows rows) {
        if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
            tested(entry, rows);
        } else if (entry.is(METHOD_ISSUED, 1) || entry.is(METHOD_WITHDRAWN, 1)) {
            issued(entry, rows);
        } else if (Settlement.of(entry).isPresent()) {
            settled(entry, Settlement.of(entry).get(), rows);
        } else if (entry.v() == Kinds.VERSION && kept(entry.kind())) {
            event(entry, text(entry, "person"), text(entry, "method"), text(entry, "round"), rows);
        }
    }

    private static boolean kept(String kind) {
        return kind.startsWith(Kinds.TRAINING) || kind.startsWith(Kinds.ROUND) || kind.startsWith(Kinds.PRACTICE);
    }

    private static void settled(Entry entry, Settlement settlement, Rows rows) {
        String subject = settlement.subject();
        if (subject.startsWith(COMPETENCE)) {
            int colon = subject.indexOf(':', COMPETENCE.length());
            if (colon > 0) {
                event(
                        entry,
                        Optional.of(subject.substring(COMPETENCE.length(), colon)),
                        Optional.of(subject.substring(colon + 1)).filter(method -> !method.equals(ALL_METHODS)),
                        Optional.empty(),
                        rows);
            }
        } else if (subject.startsWith(Kinds.ROUND)) {
            int colon = subject.indexOf(':');
            String round = subject.substring(Kinds.ROUND.length(), colon < 0 ? subject.length() : colon);
            event(entry, Optional.empty(), Optional.empty(), Optional.of(round), rows);
        }
    }

    /** Counts for who read the strip: an observer reads in the operator's stead. */
    private static void tested(Entry entry, Rows rows) {
        Reading reading = RecordedReadingJson.read(entry.ref().toString(), entry.body())
                .orRefuse()
                .reading();
        rows.write(
                "insert into tested (station, seq, person, method, taken) values (?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                reading.observer().orElse(reading.operator()).value(),
                reading.method().value(),
                reading.times().started().or(() -> reading.times().read()).orElse(entry.at()));
    }

    private static void issued(Entry entry, Rows rows) {
        boolean withdrawn = entry.kind().equals(METHOD_WITHDRAWN);
        Fields fields = withdrawn
                ? Fields.of(entry.ref().toString(), entry.body())
                : Fields.of(entry.ref().toString(), entry.body()).child("method");
        rows.write(
                "insert into issued (station, seq, at, method, version) values (?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.at(),
                fields.text(withdrawn ? "method" : "id"),
                withdrawn ? Optional.empty() : Optional.of(fields.whole("version")));
    }

    private static void event(
            Entry entry, Optional<String> person, Optional<String> method, Optional<String> round, Rows rows) {
        rows.write(
                "insert into training_event (station, seq, id, at, acted_at, kind, person, method, round, written_by,"
                        + " signed, body) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.ref().station().value(),
                entry.ref().seq(),
                entry.id(),
                entry.at(),
                actedAt(entry),
                entry.kind(),
                person,
                method,
                round,
                entry.by().value(),
                Signature.under(entry).signed(),
                entry.body().canonical());
    }

    private static Instant actedAt(Entry entry) {
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        return fields.optionalInstant("at").orElse(entry.at());
    }

    private static Optional<String> text(Entry entry, String member) {
        return entry.body().get(member).filter(Json.Text.class::isInstance).map(text -> ((Json.Text) text).value());
    }
}
