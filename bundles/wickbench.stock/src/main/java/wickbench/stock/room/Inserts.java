package wickbench.stock.room;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.stock.Kit;

/**
 * By which revision of a kit's insert its methods are written, as of then.
 *
 * <p>The issued methods govern. Where none of them states a revision, or the bench is not installed, the kit's own definition does.
 *
 * @param issues in any order
 * @param ends in any order
 */
record Inserts(List<Issue> issues, List<End> ends) {
    static final Inserts NONE = new Inserts(List.of(), List.of());

    private static final Comparator<Issue> IN_ORDER = Comparator.comparing(Issue::at)
            .thenComparing(issue -> issue.entry().station())
            .thenComparing(issue -> issue.entry().seq());

    /** A version of a method was issued. */
    record Issue(EntryRef entry, MethodRef method, String kit, Optional<String> revision, Instant at) {}

    /** A method was withdrawn. */
    record End(MethodId method, Instant at) {}

    /** Returns the revisions by which the methods of a kit in force at an instant are written; empty when nobody states one. */
    List<String> of(Kit kit, Instant at) {
        return or(kit, inForce(at).filter(issue -> issue.kit().equals(kit.name())));
    }

    /** Returns the revision by which one version of a method is written; several where stations issued it differently. */
    List<String> of(MethodRef method, Kit kit) {
        return or(kit, issues.stream().filter(issue -> issue.method().equals(method)));
    }

    private static List<String> or(Kit kit, Stream<Issue> some) {
        List<String> stated = some.flatMap(issue -> issue.revision().stream())
                .distinct()
                .sorted()
                .toList();
        return stated.isEmpty() ? kit.insertRevision().map(List::of).orElse(List.of()) : stated;
    }

    private Stream<Issue> inForce(Instant at) {
        Map<MethodId, Issue> newest = new LinkedHashMap<>();
        issues.stream()
                .filter(issue -> !issue.at().isAfter(at))
                .sorted(IN_ORDER)
                .forEach(issue -> newest.put(issue.method().id(), issue));
        return newest.values().stream().filter(issue -> ends.stream().noneMatch(end -> ended(issue, end, at)));
    }

    private static boolean ended(Issue issue, End end, Instant at) {
        return end.method().equals(issue.method().id())
                && !end.at().isBefore(issue.at())
                && !end.at().isAfter(at);
    }

    /** Returns the kits that a version is written for: one, or several where stations clashed. */
    List<String> kits(MethodRef method) {
        return issues.stream()
                .filter(issue -> issue.method().equals(method))
                .map(Issue::kit)
                .distinct()
                .sorted()
                .toList();
    }
}
