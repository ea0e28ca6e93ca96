package wickbench.journal.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Permission;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.clash.Clash;
import wickbench.api.clash.Settling;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;

/** The ports through which clashes are shown and settled; none of them is asked on the UI thread. */
record ClashDoors(Settling settling, People people, Permissions permissions, SignIn signIn) {

    /** A decision that clashes with another: which entry, of which kind, by whom and when by that station's clock. */
    record Choice(EntryRef ref, String kind, String who, Optional<Instant> at) {}

    /** A subject that was decided differently. */
    record Open(String subject, List<Choice> choices) {}

    /**
     * What clashes and who may settle it.
     *
     * @param signer name and id of the person at the desk; empty when nobody has it
     * @param keyed whether they have a passphrase to sign with
     */
    record Known(List<Open> open, Optional<String> signer, Permission settle, boolean keyed) {
        static final Known NONE = new Known(List.of(), Optional.empty(), new Permission.Allowed(), false);
    }

    Known known(Journal journal, Optional<PersonId> actor) {
        List<Open> open =
                settling.open().stream().map(clash -> open(clash, journal)).toList();
        return open.isEmpty() ? Known.NONE : rights(open, actor);
    }

    private Open open(Clash clash, Journal journal) {
        return new Open(
                clash.subject(),
                clash.decisions().stream().map(ref -> choice(ref, journal)).toList());
    }

    private Choice choice(EntryRef ref, Journal journal) {
        return journal.entry(ref)
                .map(entry -> new Choice(ref, entry.kind(), who(entry.by()), Optional.of(entry.at())))
                .orElseGet(() -> new Choice(ref, "", "", Optional.empty()));
    }

    private String who(PersonId id) {
        String name = people.find(id).map(Person::display).orElseGet(id::value);
        return name.equals(id.value()) ? name : JournalUiWords.get("person", name, id);
    }

    /** Who has not signed in yet does so with the signature. */
    private Known rights(List<Open> open, Optional<PersonId> actor) {
        boolean keyed =
                actor.filter(who -> signIn.secretOf(who) == Secret.PASSPHRASE).isPresent();
        Permission said = actor.map(who -> permissions.ask(who, Act.SETTLE_CLASH))
                .orElseGet(() -> new Permission.Denied("desk.nobody", JournalUiWords.get("clashes.nobody")));
        boolean onlyUnproved =
                said instanceof Permission.Denied denied && denied.code().equals("sign-in.needed") && keyed;
        return new Known(open, actor.map(this::who), onlyUnproved ? new Permission.Allowed() : said, keyed);
    }
}
