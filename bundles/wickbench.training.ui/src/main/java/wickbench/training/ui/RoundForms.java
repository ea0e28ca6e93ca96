package wickbench.training.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Actor;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Call;
import wickbench.training.Round;
import wickbench.widgets.Field;

/** What is asked before calls are taken from a sheet, and before the key is opened although somebody is missing. */
record RoundForms(PageContext context, TrainingDoors doors, RoundList.Known known, Composite room, Runnable grown) {

    /**
     * Asks whose sheet it is, and which file.
     *
     * @param callers whose sheets may be typed by who is at the desk
     */
    void sheet(Round round, List<PersonId> callers, Consumer<Round> done) {
        AsideForm form = new AsideForm(
                room, context, TrainingUiWords.get("sheet.title"), TrainingUiWords.get("sheet.line"), grown);
        Field<Combo> caller = form.form()
                .choice(
                        TrainingUiWords.get("sheet.caller"),
                        callers.stream().map(known.site()::who).toList());
        caller.control().select(0);
        Field<Text> file = form.form().text(TrainingUiWords.get("sheet.file"));
        context.theme()
                .controls()
                .button(
                        form.card(),
                        TrainingUiWords.get("sheet.choose"),
                        () -> context.files()
                                .open(TrainingUiWords.get("sheet.choose-file"), "*.csv", "*")
                                .ifPresent(chosen -> file.control().setText(chosen.toString())));
        form.act(
                TrainingUiWords.get("sheet.keep"),
                () -> {
                    String path = file.control().getText().strip();
                    if (path.isEmpty()) {
                        file.complain(TrainingUiWords.get("sheet.file.asked"));
                        return Optional.empty();
                    }
                    PersonId who = callers.get(caller.control().getSelectionIndex());
                    return Optional.of(progress -> keep(round, who, Path.of(path)));
                },
                done);
        caller.control().setFocus();
    }

    private Round keep(Round round, PersonId who, Path file) {
        List<Call> calls = doors.blind().sheets().calls(round, file);
        Optional<String> source = Optional.of(file.getFileName().toString());
        return doors.blind().rounds().call(round.id(), who, calls, source, by());
    }

    private Actor by() {
        return Actor.of(known.site().rights().actor().orElseThrow());
    }

    /** Asks who is left out, and why. */
    void close(Round round, Consumer<Round> done) {
        AsideForm form = new AsideForm(
                room, context, TrainingUiWords.get("close.title"), TrainingUiWords.get("close.line"), grown);
        Map<PersonId, Button> out = new LinkedHashMap<>();
        round.missing()
                .forEach(person -> out.put(
                        person,
                        context.theme()
                                .controls()
                                .check(
                                        form.form().grid().getParent(),
                                        TrainingUiWords.get(
                                                "close.without", known.site().who(person)))));
        Field<Text> reason = form.form().text(TrainingUiWords.get("sign.reason"));
        form.act(
                TrainingUiWords.get("close.open"),
                () -> {
                    List<PersonId> without = new ArrayList<>();
                    out.forEach((person, tick) -> {
                        if (tick.getSelection()) {
                            without.add(person);
                        }
                    });
                    String why = reason.control().getText();
                    return Optional.of(
                            progress -> doors.blind().rounds().close(round.id(), without, Optional.of(why), by()));
                },
                done);
        out.values().stream().findFirst().ifPresent(Button::setFocus);
    }
}
