package wickbench.plant.face;

import java.util.Optional;
import java.util.function.IntSupplier;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.person.PersonId;

/** A house in which nobody is asked who they are. */
final class OpenHouse implements SignIn {
    @Override
    public boolean asked() {
        return false;
    }

    @Override
    public Secret secretOf(PersonId who) {
        return Secret.NONE;
    }

    @Override
    public void open(PersonId who, Passphrase passphrase) {
        throw new AssertionError("nobody was to be asked");
    }

    @Override
    public boolean sits(PersonId who) {
        return false;
    }

    @Override
    public void seen(PersonId who) {}

    @Override
    public void close(PersonId who) {}

    @Override
    public int apart(IntSupplier call) {
        return call.getAsInt();
    }

    @Override
    public PersonId atBench(String idOrBadge, Optional<Passphrase> pin) {
        return new PersonId(idOrBadge);
    }
}
