package wickbench.stock.room;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.stock.Clash;
import wickbench.stock.Companion;
import wickbench.stock.Kit;
import wickbench.stock.Lot;

/** Makes a lot of what was told of it. Pure: equal entries give equal lots, whatever their order of arrival. */
final class LotFold {
    private final Terms terms;

    LotFold(Terms terms) {
        this.terms = terms;
    }

    /**
     * Returns the lot as it stood at an instant; empty when it had not come, or its kit was never defined.
     *
     * @param told everything that was told of it, in any order
     */
    Optional<Lot> at(LotId id, List<Told> told, Uses uses, Instant at) {
        Set<EntryRef> dropped = settled(told, at);
        List<Told> known = told.stream()
                .filter(each -> !each.event().at().isAfter(at))
                .filter(each -> !dropped.contains(each.entry()))
                .sorted(Told.IN_ORDER)
                .toList();
        Course course = Course.of(known);
        return course.received()
                ? terms.kits()
                        .at(course.deliveries().get(0).kit(), at)
                        .map(kit -> lot(id, kit, course, known, uses, at))
                : Optional.empty();
    }

    /** Returns decisions that do not stand, because somebody settled a clash in favour of another. */
    private static Set<EntryRef> settled(List<Told> told, Instant at) {
        return told.stream()
                .map(Told::event)
                .filter(event ->
                        event instanceof LotEvent.Settled && !event.at().isAfter(at))
                .flatMap(event -> ((LotEvent.Settled) event).dropped().stream())
                .collect(Collectors.toSet());
    }

    private Lot lot(LotId id, Kit kit, Course course, List<Told> known, Uses uses, Instant at) {
        List<LotEvent.Received> deliveries = course.deliveries();
        LotEvent.Received newest = deliveries.get(deliveries.size() - 1);
        List<Companion> companions = deliveries.stream()
                .flatMap(each -> each.companions().stream())
                .distinct()
                .toList();
        LocalDate label = label(kit, deliveries, companions);
        Shelf.Left left = new Shelf(kit, known, uses, at).left();
        Effective effective = effective(label, kit, course);
        return new Lot(
                id,
                kit,
                course.state(),
                label,
                effective.day(),
                effective.why(),
                deliveries.get(0).at(),
                course.checked(),
                course.waived(),
                terms.waiving().allows(kit),
                course.opened(),
                left.pouch(),
                course.place(),
                newest.insert(),
                terms.inserts().of(kit, at),
                companions,
                course.quarantines(),
                left.parts(),
                left.unrecordedPouches(),
                clashes(course, known, left, uses, at));
    }

    /** A day and what made it. */
    private record Effective(LocalDate day, String why) {}

    private Effective effective(LocalDate label, Kit kit, Course course) {
        Stream<Effective> opened = kit
                .boxDays()
                .flatMap(days -> course.opened()
                        .map(when -> LocalDate.ofInstant(when, terms.zone()).plusDays(days)))
                .map(day -> new Effective(day, "opened"))
                .stream();
        Stream<Effective> decided = course.until().map(day -> new Effective(day, "decided")).stream();
        // the earliest holds, so nothing that is said later can lengthen it
        return Stream.concat(Stream.of(new Effective(label, "label")), Stream.concat(opened, decided))
                .min(Comparator.comparing(Effective::day))
                .orElseThrow();
    }

    /** Where lots may not be mixed, the liquids that came with the strips end with them. */
    private static LocalDate label(Kit kit, List<LotEvent.Received> deliveries, List<Companion> companions) {
        Stream<LocalDate> liquids =
                kit.mayMix() ? Stream.empty() : companions.stream().flatMap(each -> each.expiry().stream());
        return Stream.concat(deliveries.stream().map(LotEvent.Received::expiry), liquids)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** More strips went than there were, and of the last ones some on one station, some on another. */
    private static List<Clash> clashes(Course course, List<Told> known, Shelf.Left left, Uses uses, Instant at) {
        List<Clash> clashes = new ArrayList<>(course.clashes());
        BigDecimal missing = left.parts().get(0).missing();
        if (missing.signum() > 0) {
            long most = missing.longValue() + 1;
            List<Uses.Gone> newest = Stream.concat(
                            uses.newest(at, most).stream(),
                            taken(known, left.parts().get(0).part().name()))
                    .sorted(Comparator.comparing(Uses.Gone::at).reversed())
                    .limit(most)
                    .toList();
            boolean several = newest.stream()
                            .map(gone -> gone.entry().station())
                            .distinct()
                            .count()
                    > 1;
            newest.stream()
                    .limit(1)
                    .filter(gone -> several)
                    .forEach(gone -> clashes.add(new Clash(gone.entry(), "strips", missing.toPlainString(), "0")));
        }
        return clashes;
    }

    private static Stream<Uses.Gone> taken(List<Told> known, String strip) {
        return known.stream()
                .filter(told -> told.event() instanceof LotEvent.Taken taken
                        && taken.part().equals(strip))
                .map(told -> new Uses.Gone(told.entry(), told.event().at()));
    }
}
