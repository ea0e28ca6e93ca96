package wickbench.figures.sums;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All sums there are. */
public final class Sums {
    private Sums() {}

    /** Returns them in the order of their topics. */
    public static List<Sum> all() {
        return Stream.of(
                        ShareSums.all(),
                        DetectionSums.all(),
                        AgreementSums.all(),
                        SeeingSums.all(),
                        SamplingSums.all(),
                        PoolSums.all(),
                        TrendSums.all(),
                        StoreSums.all(),
                        LevelSums.all())
                .flatMap(List::stream)
                .toList();
    }

    public static Optional<Sum> find(String id) {
        return all().stream().filter(sum -> sum.id().equals(id)).findFirst();
    }
}
