package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Act;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/** Everything that can be done about one person. */
final class PersonCard {
    private final PageContext context;
    private final PeopleDoors doors;
    private final Runnable grown;
    private final Runnable done;

    /**
     * What the card needs to know, read beforehand.
     *
     * @param actor who acts at this desk
     * @param others everybody else with a passphrase, who may witness
     */
    record Facts(
            PersonRow row,
            PersonId actor,
            boolean asked,
            List<PersonId> others,
            Permission roles,
            Permission reset,
            Permission key,
            Permission forget) {
        PersonId who() {
            return row.person().id();
        }

        static Facts of(PeopleDoors doors, PersonRow row, PersonId actor, List<PersonRow> everyone) {
            List<PersonId> others = everyone.stream()
                    .filter(each -> each.secret() == Secret.PASSPHRASE)
                    .map(each -> each.person().id())
                    .filter(id -> !id.equals(actor) && !id.equals(row.person().id()))
                    .toList();
            return new Facts(
                    row,
                    actor,
                    doors.signIn().asked(),
                    others,
                    doors.permissions().ask(actor, Act.ASSIGN_ROLES),
                    doors.permissions().ask(actor, Act.RESET_PASSPHRASE),
                    doors.permissions().ask(actor, Act.SET_BENCH_KEY),
                    doors.permissions().ask(actor, Act.FORGET_PERSON));
        }
    }

    PersonCard(PageContext context, PeopleDoors doors, Runnable grown, Runnable done) {
        this.context = context;
        this.doors = doors;
        this.grown = grown;
        this.done = done;
    }

    void fill(Composite parent, Facts facts) {
        context.theme()
                .controls()
                .label(parent, Type.TITLE, facts.row().person().display());
        roles(section(parent, "roles"), facts);
        if (facts.who().equals(facts.actor())) {
            own(section(parent, "own"), facts);
        } else {
            once(section(parent, "once"), facts);
        }
        bench(section(parent, "bench"), facts);
        forget(section(parent, "forget"), facts);
    }

    private void roles(Section section, Facts facts) {
        RoleChecks checks =
                new RoleChecks(section.card(), context, facts.row().person().roles());
        act(section, "roles.act", facts.roles(), () -> {
            Set<wickbench.api.person.Role> ticked = checks.ticked();
            return Optional.of(progress -> doors.people().assign(facts.who(), ticked, facts.actor()));
        });
    }

    private void own(Section section, Facts facts) {
        boolean has = facts.row().secret() != Secret.NONE;
        Optional<Field<Text>> now = has ? Optional.of(section.secret("now")) : Optional.empty();
        Fresh fresh = Fresh.in(section, "fresh");
        act(section, "own.act", new Permission.Allowed(), () -> {
            Optional<Passphrase> held = now.map(Section::take);
            return fresh.take().map(typed -> progress -> {
                doors.credentials().set(facts.who(), held, typed);
                return typed;
            });
        });
    }

    private void once(Section section, Facts facts) {
        Field<Text> mine = section.secret("mine");
        boolean keyed = facts.row().secret() != Secret.NONE;
        Optional<Field<Combo>> witness = keyed
                ? Optional.of(section.choice(
                        "witness", facts.others().stream().map(PersonId::value).toList()))
                : Optional.empty();
        Optional<Field<Text>> theirs = keyed ? Optional.of(section.secret("witness.secret")) : Optional.empty();
        Fresh fresh = Fresh.in(section, "phrase");
        act(section, "once.act", facts.reset(), () -> {
            Signing by = new Signing(facts.actor(), Section.take(mine));
            Optional<Signing> second = witness.filter(
                            field -> !field.control().getText().isEmpty())
                    .map(field ->
                            new Signing(new PersonId(field.control().getText()), Section.take(theirs.orElseThrow())));
            return fresh.take().map(phrase -> progress -> {
                doors.credentials().reset(facts.who(), phrase, by, second);
                return phrase;
            });
        });
    }

    private void bench(Section section, Facts facts) {
        Permission may = facts.who().equals(facts.actor()) && !facts.asked() ? new Permission.Allowed() : facts.key();
        Field<Text> pin = section.secret("pin");
        Field<Text> badge = section.text("badge");
        act(section, "bench.act", may, () -> {
            String says = badge.control().getText().strip();
            Optional<Passphrase> digits = Optional.of(Section.take(pin)).filter(typed -> typed.length() > 0);
            return Optional.of(progress -> {
                digits.ifPresent(typed -> doors.credentials().pin(facts.who(), typed, facts.actor()));
                if (!says.isEmpty()) {
                    doors.credentials().badge(facts.who(), says, facts.actor());
                }
                return says;
            });
        });
    }

    private void forget(Section section, Facts facts) {
        Optional<Field<Text>> mine = facts.asked() ? Optional.of(section.secret("mine")) : Optional.empty();
        act(section, "forget.act", facts.forget(), () -> {
            Optional<Passphrase> signature = mine.map(Section::take);
            return Optional.of(progress -> {
                doors.credentials().forget(facts.who(), facts.actor(), signature);
                return facts.who();
            });
        });
    }

    private <T> void act(
            Section section, String key, Permission may, java.util.function.Supplier<Optional<Work<T>>> collect) {
        section.act(key, may, collect, done);
    }

    private Section section(Composite parent, String key) {
        return new Section(parent, context, key, grown);
    }
}
