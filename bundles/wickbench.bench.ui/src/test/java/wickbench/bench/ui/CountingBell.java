package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Remembers what would be heard. */
final class CountingBell implements Bell {
    final List<Sound> rung = new ArrayList<>();
    Optional<Trouble> trouble = Optional.empty();

    @Override
    public void ring(Sound sound) {
        rung.add(sound);
    }

    @Override
    public Optional<Trouble> trouble() {
        return trouble;
    }
}
