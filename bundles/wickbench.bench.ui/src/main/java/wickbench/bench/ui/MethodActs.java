package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.authority.Passphrase;
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
        context.files().open(BenchUiWords.get("methods.choose"), "*.json", "*").ifPresent(file -> read(file, then));
    }

    void read(Path file, Consumer<Draft> then) {
        context.jobs()
                .run(
                        BenchUiWords.get("methods.reading-file", file),
                        progress -> new Draft(file, doors.methods().read(file)),
                        then);
    }

    Shell issue(Known known, Method method, Runnable done) {
        String title =
                BenchUiWords.get("issue.title", method.ref().id(), method.ref().version());
        return ask(
                known,
                new Words(title, "issue.meaning", "issue.verb", Optional.empty()),
                (by, passphrase, reason) -> {
                    boolean signed =
                            doors.methods().issue(method, by, passphrase).signed();
                    return BenchUiWords.get(signed ? "issue.signed" : "issue.unsigned", method.ref());
                },
                done);
    }

    Shell withdraw(Known known, Method method, Runnable done) {
        String title = BenchUiWords.get("withdraw.title", method.ref().id());
        return ask(
                known,
                new Words(title, "withdraw.meaning", "withdraw.verb", Optional.of("withdraw.reason")),
                (by, passphrase, reason) -> {
                    boolean signed = passphrase.isPresent();
                    doors.methods().withdraw(method.ref().id(), reason, by, passphrase);
                    return BenchUiWords.get(
                            signed ? "withdraw.signed" : "withdraw.unsigned",
                            method.ref().id());
                },
                done);
    }

    /** Signs for what a method was shown to work for. */
    Shell verify(Known known, Verification what, Runnable done) {
        String title = BenchUiWords.get("verify.asked", what.method(), what.what());
        return ask(
                known,
                new Words(title, "verify.meaning", "verify.sign", Optional.empty()),
                (by, passphrase, reason) -> {
                    doors.verifications().verify(what, by, passphrase);
                    return BenchUiWords.get("verify.done", what.method(), what.what());
                },
                done);
    }

    /** Signs for the end of it. */
    Shell end(Known known, Verified verified, Runnable done) {
        String what = verified.what().what();
        return ask(
                known,
                new Words(
                        BenchUiWords.get("evidence.end.title", what),
                        "evidence.end.meaning",
                        "evidence.end.sign",
                        Optional.of("withdraw.reason")),
                (by, passphrase, reason) -> {
                    doors.verifications().end(verified.entry(), reason, by, passphrase);
                    return BenchUiWords.get("evidence.end.done", what);
                },
                done);
    }

    /** What the sheet says: its title, and the keys of its other words. */
    private record Words(String title, String meaning, String verb, Optional<String> reason) {}

    /** Does what is signed, off the UI thread, and returns what to say of it then. */
    private interface Signed {
        String act(PersonId by, Optional<Passphrase> passphrase, String reason) throws Exception;
    }

    private Shell ask(Known known, Words words, Signed signed, Runnable done) {
        PersonId by = known.rights().actor().orElseThrow();
        return SignSheet.open(
                context,
                window,
                new Asked(
                        words.title(),
                        known.who(by),
                        BenchUiWords.get(words.meaning()),
                        BenchUiWords.get(words.verb()),
                        words.reason().map(BenchUiWords::get),
                        known.rights().keyed()),
                (passphrase, reason) -> signed.act(by, passphrase, reason),
                said -> {
                    context.say(said);
                    done.run();
                });
    }
}
