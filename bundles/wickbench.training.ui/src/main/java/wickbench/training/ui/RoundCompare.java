package wickbench.training.ui;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Compared;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Type;

/** Compares one reader in this round and an earlier one on the strips that both hold; stands where there are such. */
record RoundCompare(PageContext context, TrainingDoors doors, RoundList.Known known, Runnable grown) {

    void fill(Composite room, Round round) {
        List<Round> others =
                known.rounds().stream().filter(other -> shares(round, other)).toList();
        if (others.isEmpty()) {
            return;
        }
        context.theme().controls().label(room, Type.STRONG, TrainingUiWords.get("compare.heading"));
        Form form = new Form(room, context.theme());
        Field<Combo> earlier = form.choice(
                TrainingUiWords.get("compare.round"),
                others.stream().map(Round::id).toList());
        List<PersonId> readers = round.scores().stream()
                .map(score -> score.reader())
                .filter(reader ->
                        others.stream().anyMatch(other -> other.scoreOf(reader).isPresent()))
                .toList();
        Field<Combo> reader = form.choice(
                TrainingUiWords.get("compare.reader"),
                readers.stream().map(known.site()::name).toList());
        Label said = context.theme().controls().text(room, Type.BODY, "");
        Runnable ask = () -> {
            int of = earlier.control().getSelectionIndex();
            int who = reader.control().getSelectionIndex();
            if (of >= 0 && who >= 0) {
                ask(readers.get(who), others.get(of), round, said);
            }
        };
        earlier.control().addListener(SWT.Selection, event -> ask.run());
        reader.control().addListener(SWT.Selection, event -> ask.run());
    }

    private static boolean shares(Round round, Round other) {
        boolean before = other.opened().isBefore(round.opened());
        boolean scored = round.state() == Round.State.SCORED && other.state() == Round.State.SCORED;
        boolean somebody = other.scores().stream()
                .anyMatch(score -> round.scoreOf(score.reader()).isPresent());
        return before && scored && somebody && items(round).stream().anyMatch(items(other)::contains);
    }

    private static java.util.Set<String> items(Round round) {
        return round.key().orElseThrow().key().strips().stream()
                .map(RoundKey.Sealed::item)
                .collect(Collectors.toSet());
    }

    private void ask(PersonId reader, Round first, Round second, Label said) {
        context.jobs()
                .run(
                        TrainingUiWords.get("compare.asking"),
                        progress -> doors.blind().rounds().compare(reader, first.id(), second.id()),
                        found -> say(said, words(found)),
                        failure -> say(said, String.valueOf(failure.getMessage())));
    }

    private String words(Compared found) {
        String counts = TrainingUiWords.get(
                "compare.say",
                known.site().name(found.reader()),
                found.shared(),
                found.firstOnly(),
                found.first(),
                found.secondOnly(),
                found.second());
        return found.test()
                .map(test -> counts + " "
                        + TrainingUiWords.get("compare.p", Percent.plain(java.util.Optional.of(test.exactP()))))
                .orElse(counts);
    }

    private void say(Label said, String text) {
        if (!said.isDisposed()) {
            said.setText(text);
            said.requestLayout();
            grown.run();
        }
    }
}
