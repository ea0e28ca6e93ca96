package wickbench.training.book;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.training.Competence;
import wickbench.training.Terms;

/** What the view holds, as what it means; what the services of this bundle stand on. */
public interface Book {

    Instant now();

    /** By which days begin here. */
    ZoneId zone();

    /** Returns what was told under a condition on the rows, by when it was done. */
    List<Told> told(String condition, Object... values);

    Competence competence(PersonId person, MethodId method, Instant at);

    Terms terms(Instant at);

    /** Tells whether anybody was authorised by then: before, this book was not kept and has nothing to say. */
    boolean begun(Instant at);

    /** Returns the methods in force then, and those that somebody was authorised for. */
    Set<MethodId> methods(Instant at);

    /** Returns the ids of everybody of whom something is written here. */
    Set<PersonId> people();

    /** Returns what stands of what was told, clashes settled. */
    static List<Told> standing(List<Told> told) {
        Set<EntryRef> dropped = dropped(told);
        return told.stream().filter(each -> !dropped.contains(each.entry())).toList();
    }

    /** Returns the decisions that do not stand, because a clash was settled in favour of another. */
    private static Set<EntryRef> dropped(List<Told> told) {
        return told.stream()
                .filter(each -> each.is(Settlement.KIND))
                .flatMap(each -> {
                    String stands = each.fields().text("stands");
                    return each.fields().texts("among").stream().filter(ref -> !ref.equals(stands));
                })
                .map(EntryRef::parse)
                .collect(Collectors.toSet());
    }
}
