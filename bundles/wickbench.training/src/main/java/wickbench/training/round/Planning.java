package wickbench.training.round;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Actor;
import wickbench.api.method.Format;
import wickbench.api.person.PersonId;
import wickbench.training.Design;
import wickbench.training.PanelStrip;
import wickbench.training.Round;
import wickbench.training.RoundPlan;
import wickbench.training.StripClass;
import wickbench.training.book.Said;

/** Whether a round can be held as it is planned. */
final class Planning {
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9_-]{0,39}");

    private Planning() {}

    static void check(RoundPlan plan, Actor by) {
        if (!ID.matcher(plan.id()).matches()) {
            throw Said.wrong("round", "round.id", plan.id());
        }
        int total = plan.design().total();
        if (total < 1 || total > Design.MOST) {
            throw Said.wrong("strips", "round.size", Design.MOST, total);
        }
        if (plan.develop().isNegative()
                || plan.develop().isZero()
                || plan.window().isNegative()) {
            throw Said.wrong("develop", "round.times");
        }
        if (plan.design().of(StripClass.HOOK) > 0 && plan.format() != Format.SANDWICH_HOOK) {
            throw Said.wrong("hook", "round.no-hook-line", plan.format().code());
        }
        Said.reason(plan.keyMaker());
        people(plan, by);
        if (!plan.panel().isEmpty()) {
            panel(plan);
        }
    }

    private static void people(RoundPlan plan, Actor by) {
        if (plan.readers().isEmpty()) {
            throw Said.wrong("readers", "round.no-readers");
        }
        List<PersonId> callers = plan.callers();
        if (new HashSet<>(callers).size() < callers.size()) {
            throw Said.wrong("readers", "round.person-twice");
        }
        if (callers.contains(by.who())) {
            throw Said.refused("round.knows-key", by.who());
        }
        if (plan.asksExperts() && plan.experts().size() < RoundPlan.leastExperts()) {
            throw Said.refused(
                    "round.no-experts", RoundPlan.leastExperts(), plan.experts().size());
        }
    }

    private static void panel(RoundPlan plan) {
        Map<StripClass, Integer> counts = new EnumMap<>(StripClass.class);
        HashSet<String> items = new HashSet<>();
        for (PanelStrip strip : plan.panel()) {
            counts.merge(strip.kind(), 1, Integer::sum);
            if (!items.add(strip.item())) {
                throw Said.wrong("panel", "panel.twice", strip.item());
            }
            if (strip.line().isPresent() != (strip.kind() == StripClass.NEAR_LIMIT)) {
                throw Said.wrong("panel", "panel.line", strip.item());
            }
        }
        for (StripClass kind : StripClass.values()) {
            int has = counts.getOrDefault(kind, 0);
            if (has != plan.design().of(kind)) {
                throw Said.wrong("panel", "panel.other-count", plan.design().of(kind), kind.code(), has);
            }
        }
    }

    /** A photograph that is read must be kept here, as a picture. */
    static void checkPictures(RoundPlan plan, Attachments attachments) {
        for (PanelStrip strip : plan.panel()) {
            strip.photograph()
                    .filter(hash -> attachments.with(hash).stream()
                            .noneMatch(kept -> kept.type().isPicture()))
                    .ifPresent(hash -> {
                        throw Said.wrong("panel", "panel.photograph", strip.item(), hash.hex());
                    });
        }
    }

    static void checkLeftOut(Round round, List<PersonId> without, Optional<String> reason) {
        for (PersonId person : without) {
            if (!round.missing().contains(person)) {
                throw Said.wrong("without", "round.without", person);
            }
        }
        if (!without.isEmpty()) {
            Said.reason(reason.orElse(""));
        }
        long experts = round.plan().experts().stream()
                .filter(expert -> !without.contains(expert))
                .count();
        if (asksExperts(round) && experts < RoundPlan.leastExperts()) {
            throw Said.refused("round.no-experts", RoundPlan.leastExperts(), experts);
        }
    }

    private static boolean asksExperts(Round round) {
        return !round.plan().experts().isEmpty() && round.plan().design().of(StripClass.NEAR_LIMIT) > 0;
    }
}
