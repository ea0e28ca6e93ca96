package wickbench.api.check;

import java.util.List;
import java.util.function.Function;

/**
 * A value that passed its checks, or the complaints why there is none.
 *
 * @param <T> the value
 */
public sealed interface Checked<T> {

    /** The input was right. */
    record Good<T>(T value) implements Checked<T> {}

    /** The input was wrong; there is at least one complaint. */
    record Bad<T>(List<Complaint> complaints) implements Checked<T> {
        public Bad {
            complaints = List.copyOf(complaints);
            if (complaints.isEmpty()) {
                throw new IllegalArgumentException("a refusal without a complaint");
            }
        }
    }

    static <T> Checked<T> good(T value) {
        return new Good<>(value);
    }

    static <T> Checked<T> bad(Complaint complaint) {
        return new Bad<>(List.of(complaint));
    }

    static <T> Checked<T> bad(List<Complaint> complaints) {
        return new Bad<>(complaints);
    }

    /** Continues with the value, if there is one. */
    default <R> Checked<R> then(Function<? super T, Checked<R>> next) {
        return this instanceof Good<T> good ? next.apply(good.value()) : bad(complaints());
    }

    default <R> Checked<R> map(Function<? super T, ? extends R> change) {
        return then(value -> good(change.apply(value)));
    }

    /** Returns the complaints; empty when the input was right. */
    default List<Complaint> complaints() {
        return this instanceof Bad<T> bad ? bad.complaints() : List.of();
    }

    /** Returns the value or ends the act with {@link BadInput}, for callers that cannot go on without it. */
    default T orRefuse() {
        if (this instanceof Good<T> good) {
            return good.value();
        }
        throw new BadInput(complaints());
    }
}
