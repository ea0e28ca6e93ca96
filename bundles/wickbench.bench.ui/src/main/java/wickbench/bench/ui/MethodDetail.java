package wickbench.bench.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.bench.evidence.Shown;
import wickbench.bench.evidence.Verifications.Verified;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.shell.PageContext;

/** One issued method at the right of the page: its card, what was shown of it, and what can be done about it. */
record MethodDetail(
        PageContext context,
        MethodDoors doors,
        MethodActs acts,
        MethodAside aside,
        Known known,
        Consumer<Method> renew,
        Runnable again) {

    /** What stands behind a card. */
    private record Read(List<IssuedMethod> versions, Map<Verified, List<Shown>> evidence) {}

    void show(IssuedMethod row) {
        MethodId id = row.method().ref().id();
        context.jobs().run(BenchUiWords.get("methods.reading"), progress -> read(id), read -> show(row, read));
    }

    private Read read(MethodId id) {
        Map<Verified, List<Shown>> evidence = new LinkedHashMap<>();
        doors.verifications()
                .of(id)
                .forEach(each -> evidence.put(each, doors.verifications().shown(each)));
        return new Read(doors.methods().versions(id), evidence);
    }

    private void show(IssuedMethod row, Read read) {
        aside.fill(content -> {
            MethodCard card = new MethodCard(content, context.theme(), known);
            card.fill(row, read.versions(), below -> buttons().fill(below, row));
            new EvidenceCard(
                            card.card("card.verified"),
                            context,
                            known,
                            doors.painter(),
                            verified -> acts.end(known, verified, () -> show(row)))
                    .fill(row.method(), read.evidence());
        });
    }

    private MethodButtons buttons() {
        MethodPaperActs papers = new MethodPaperActs(context, doors.papers());
        return new MethodButtons(
                context, known, renew, method -> acts.withdraw(known, method, again), this::verify, papers);
    }

    private void verify(IssuedMethod row) {
        context.jobs()
                .run(
                        BenchUiWords.get("methods.reading"),
                        progress -> doors.verifications().kept(),
                        kept -> aside.fill(content -> new VerifyForm(
                                content,
                                context,
                                known,
                                row.method(),
                                kept,
                                what -> acts.verify(known, what, () -> show(row)),
                                () -> show(row))));
    }
}
