package wickbench.figures.agreement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.proportion.Interval;

/**
 * Several readers judge the same items several times against a reference (attribute study of the AIAG manual Measurement Systems
 * Analysis, 4th ed. 2010, chapter III-C).
 *
 * @param readers each reader's figures, by name
 * @param system items that every reader judged right every time, with exact limits
 */
public record AttributeStudy(Map<String, Reader> readers, Limits system) {

    /**
     * One judgement.
     *
     * @param item what was judged
     * @param reader who
     * @param positive what was said
     * @param truth what is so
     */
    public record Judgement(String item, String reader, boolean positive, boolean truth) {}

    /**
     * @param effectiveness items judged right every time, with exact limits
     * @param consistency items judged alike every time, right or wrong, with exact limits
     * @param misses share of judgements of true positives that said negative; absent without any
     * @param falseAlarms share of judgements of true negatives that said positive; absent without any
     */
    public record Reader(Limits effectiveness, Limits consistency, OptionalDouble misses, OptionalDouble falseAlarms) {}

    public static AttributeStudy of(List<Judgement> judgements, double level) {
        if (judgements.isEmpty()) {
            throw NoAnswer.of("", "attribute.none");
        }
        Map<String, List<Judgement>> byReader = new LinkedHashMap<>();
        judgements.forEach(each -> byReader.computeIfAbsent(each.reader(), name -> new ArrayList<>())
                .add(each));
        checkTruth(judgements);
        Map<String, Reader> readers = new LinkedHashMap<>();
        byReader.forEach((name, own) -> readers.put(name, reader(own, level)));
        return new AttributeStudy(readers, share(judgements, AttributeStudy::allRight, level));
    }

    private static void checkTruth(List<Judgement> judgements) {
        Map<String, Boolean> truths = new LinkedHashMap<>();
        for (int i = 0; i < judgements.size(); i++) {
            Judgement each = judgements.get(i);
            Boolean before = truths.putIfAbsent(each.item(), each.truth());
            if (before != null && before != each.truth()) {
                throw NoAnswer.of("reference", "attribute.two-truths", each.item())
                        .inRow(i);
            }
        }
    }

    private static Reader reader(List<Judgement> own, double level) {
        return new Reader(
                share(own, AttributeStudy::allRight, level),
                share(own, AttributeStudy::allAlike, level),
                wrong(own, true),
                wrong(own, false));
    }

    /** Of the items, those whose judgements all pass. */
    private static Limits share(List<Judgement> judgements, Predicate<List<Judgement>> wanted, double level) {
        Map<String, List<Judgement>> byItem = new LinkedHashMap<>();
        judgements.forEach(each ->
                byItem.computeIfAbsent(each.item(), item -> new ArrayList<>()).add(each));
        long right = byItem.values().stream().filter(wanted).count();
        return Interval.EXACT.of(right, byItem.size(), level);
    }

    private static boolean allRight(List<Judgement> ofItem) {
        return ofItem.stream().allMatch(each -> each.positive() == each.truth());
    }

    private static boolean allAlike(List<Judgement> ofItem) {
        Set<Boolean> said = new LinkedHashSet<>();
        ofItem.forEach(each -> said.add(each.positive()));
        return said.size() == 1;
    }

    private static OptionalDouble wrong(List<Judgement> own, boolean truth) {
        return own.stream()
                .filter(each -> each.truth() == truth)
                .mapToInt(each -> each.positive() == truth ? 0 : 1)
                .average();
    }
}
