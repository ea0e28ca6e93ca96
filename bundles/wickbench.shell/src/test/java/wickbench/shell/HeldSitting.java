package wickbench.shell;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntSupplier;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.SignIn;
import wickbench.api.person.PersonId;

/** A house with one person, whose sitting ends when told. */
record HeldSitting(PersonId who, AtomicBoolean held) implements SignIn {
    @Override
    public boolean asked() {
        return true;
    }

    @Override
    public Secret secretOf(PersonId id) {
        return id.equals(who) ? Secret.PASSPHRASE : Secret.NONE;
    }

    @Override
    public void open(PersonId id, Passphrase passphrase) {
        held.set(true);
    }

    @Override
    public boolean sits(PersonId id) {
        return id.equals(who) && held.get();
    }

    @Override
    public void seen(PersonId id) {}

    @Override
    public void close(PersonId id) {
        held.set(false);
    }

    @Override
    public int apart(IntSupplier call) {
        return call.getAsInt();
    }

    @Override
    public PersonId atBench(String idOrBadge, Optional<Passphrase> pin) {
        return who;
    }
}
