package wickbench.bench.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.Method;
import wickbench.bench.evidence.Reach;
import wickbench.bench.evidence.Shown;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.KeptSum;
import wickbench.figures.sums.KeptSums.Kept;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Remark;
import wickbench.figures.sums.Sum;
import wickbench.figures.sums.Sums;

/** Reads a kept sum again: its figures as they were kept, its words and plot by the formula of the time. */
final class EvidenceReader {
    private EvidenceReader() {}

    static Shown file(EntryRef entry) {
        return new Shown(entry, VerifyWords.get("file"), List.of(), Optional.empty(), Optional.empty());
    }

    static Shown sum(Method method, Kept kept) {
        KeptSum what = kept.what();
        Optional<Sum> sum = Sums.find(what.sum());
        List<String> words = new ArrayList<>();
        Optional<Answer> answer = sum.filter(known -> known.version() == what.version())
                .map(known -> known.reckon(what.given()))
                .filter(Reckoned.Done.class::isInstance)
                .map(done -> ((Reckoned.Done) done).answer());
        answer.ifPresentOrElse(
                said -> {
                    words.addAll(said.said(Remark.Kind.RESULT));
                    words.addAll(said.said(Remark.Kind.CAUTION));
                },
                () -> words.add(VerifyWords.get("other-formula", what.version())));
        what.about().ifPresent(words::add);
        return new Shown(
                kept.entry(),
                sum.map(Sum::title).orElse(what.sum()),
                words,
                answer.flatMap(Answer::plot).map(Supplier::get),
                Reach.of(method, what));
    }
}
