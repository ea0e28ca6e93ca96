package wickbench.people.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.widgets.Field;

/** A new secret, typed twice since nobody sees it. */
record Fresh(Field<Text> first, Field<Text> again) {

    static Fresh in(Section section, String key) {
        return new Fresh(section.secret(key), section.secret("again"));
    }

    /** Takes it, if both are the same; says so below the field when not. */
    Optional<Passphrase> take() {
        again.clear();
        Passphrase typed = Section.take(first);
        Passphrase repeated = Section.take(again);
        if (!typed.same(repeated)) {
            again.complain(PeopleUiWords.get("again.differs"));
            return Optional.empty();
        }
        return Optional.of(typed);
    }
}
