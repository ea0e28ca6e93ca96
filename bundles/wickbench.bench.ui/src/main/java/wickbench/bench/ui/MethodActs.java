package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.check.Checked;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.bench.evidence.Verification;
import wickbench.bench.evidence.Verifications.Verified;
import wickbench.bench.ui.MethodDoors.Known;
import wickbench.shell.PageContext;
import wickbench.shell.SignSheet;
import wickbench.shell.SignSheet.Asked;

/** Issues, withdraws and verifies methods, each under a name. */
record MethodActs(PageContext context, MethodDoors doors, Shell window) {

    /** What stands in a file that may be issued. */
    record Draft(Path file, Checked<Method> read) {}

    /** Lets the person choose a file, and reads it. */
    void choose(Consumer<Draft> then) {
        FileDialog dialog = new FileDialog(window, SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.json", "*"});
        dialog.setText(BenchUiWords.get("methods.choose"));
        Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(file -> read(file, then));
    }

    void read(Path file, Consumer<Draft> then) {
        context.jobs()
                .run(
                        BenchUiWords.get("methods.reading-file", file),
                        progress -> new Draft(file, doors.methods().read(file)),
                        then);
    }

    Shell issue(Known known, Method method, Runnable done) {
        PersonId by = known.rights().actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                new Asked(
                        BenchUiWords.get(
                                "issue.title", method.ref().id(), method.ref().version()),
                        known.who(by),
                        BenchUiWords.get("issue.meaning"),
                        BenchUiWords.get("issue.verb"),
                        Optional.empty(),
                        known.rights().keyed()),
                (passphrase, reason) -> doors.methods().issue(method, by, passphrase),
                issued -> {
                    context.say(BenchUiWords.get(issued.signed() ? "issue.signed" : "issue.unsigned", method.ref()));
                    done.run();
                });
    }

    Shell withdraw(Known known, Method method, Runnable done) {
        PersonId by = known.rights().actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                new Asked(
                        BenchUiWords.get("withdraw.title", method.ref().id()),
                        known.who(by),
                        BenchUiWords.get("withdraw.meaning"),
                        BenchUiWords.get("withdraw.verb"),
                        Optional.of(BenchUiWords.get("withdraw.reason")),
                        known.rights().keyed()),
                (passphrase, reason) -> {
                    doors.methods().withdraw(method.ref().id(), reason, by, passphrase);
                    return passphrase.isPresent();
                },
                signed -> {
                    context.say(BenchUiWords.get(
                            signed ? "withdraw.signed" : "withdraw.unsigned",
                            method.ref().id()));
                    done.run();
                });
    }

    /** Signs for what a method was shown to work for. */
    Shell verify(Known known, Verification what, Runnable done) {
        PersonId by = known.rights().actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                new Asked(
                        BenchUiWords.get("verify.asked", what.method(), what.what()),
                        known.who(by),
                        BenchUiWords.get("verify.meaning"),
                        BenchUiWords.get("verify.sign"),
                        Optional.empty(),
                        known.rights().keyed()),
                (passphrase, reason) -> doors.verifications().verify(what, by, passphrase),
                entry -> {
                    context.say(BenchUiWords.get("verify.done", what.method(), what.what()));
                    done.run();
                });
    }

    /** Signs for the end of it. */
    Shell end(Known known, Verified verified, Runnable done) {
        PersonId by = known.rights().actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                new Asked(
                        BenchUiWords.get("evidence.end.title", verified.what().what()),
                        known.who(by),
                        BenchUiWords.get("evidence.end.meaning"),
                        BenchUiWords.get("evidence.end.sign"),
                        Optional.of(BenchUiWords.get("withdraw.reason")),
                        known.rights().keyed()),
                (passphrase, reason) -> {
                    doors.verifications().end(verified.entry(), reason, by, passphrase);
                    return verified;
                },
                ended -> {
                    context.say(BenchUiWords.get(
                            "evidence.end.done", verified.what().what()));
                    done.run();
                });
    }
}
