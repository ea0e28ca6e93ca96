package wickbench.ledger.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.Home;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.Results;
import wickbench.ledger.Reviewed;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Reviewing;

/** Signs for results that others have read. */
@Component
public final class ReviewDesk implements Reviewing {
    private final Home home;
    private final Journal journal;
    private final Results results;
    private final SiteFacts site;
    private final Authority authority;

    @Activate
    public ReviewDesk(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Results results,
            @Reference SiteFacts site,
            @Reference Authority authority) {
        this.home = home;
        this.journal = journal;
        this.results = results;
        this.site = site;
        this.authority = authority;
    }

    @Override
    public Waiting waiting() {
        Site now = site.now();
        Filter waiting = Filter.ALL.onlyUnreviewed(true);
        return new Waiting(
                results.count(waiting),
                results.unreviewedBefore(now.reviewOverdueBefore(
                        home.clock().instant().atZone(now.zone()).toLocalDate())));
    }

    @Override
    public synchronized Optional<EntryRef> review(
            List<UUID> asked, Optional<String> remark, PersonId by, Optional<Passphrase> passphrase) {
        List<No> reasons = new ArrayList<>();
        List<ResultDetail> details = new ArrayList<>();
        for (UUID id : asked.stream().distinct().toList()) {
            results.find(id)
                    .ifPresentOrElse(
                            details::add,
                            () -> reasons.add(new No("review.unknown", ActsWords.get("review.unknown", id))));
        }
        List<UUID> statements = details.stream()
                .filter(detail -> detail.row().reviewed().isEmpty())
                .map(detail -> detail.row().stands())
                .distinct()
                .toList();
        if (statements.isEmpty() && reasons.isEmpty()) {
            return Optional.empty();
        }
        Reviewed body = new Reviewed(statements, remark.filter(text -> !text.isBlank()));
        Draft draft = authority.authorise(
                Act.REVIEW_READING,
                new Draft(Draft.randomId(home.chance()), by, Reviewed.KIND, Reviewed.VERSION, body.body()),
                passphrase);
        details.forEach(detail -> reasons.addAll(against(detail, by)));
        No.refuse(reasons);
        return Optional.of(journal.append(List.of(draft)).get(0).ref());
    }

    private static List<No> against(ResultDetail detail, PersonId by) {
        List<No> reasons = new ArrayList<>();
        if (Readers.of(detail).contains(by)) {
            reasons.add(no("review.own-reading", detail, by));
        }
        if (Readers.correctors(detail).contains(by)) {
            reasons.add(no("review.own-correction", detail, by));
        }
        if (!detail.asRecorded()) {
            reasons.add(no("review.differs", detail, by));
        }
        return reasons;
    }

    private static No no(String code, ResultDetail detail, PersonId by) {
        return new No(code, ActsWords.get(code, detail.row().sample(), by));
    }
}
