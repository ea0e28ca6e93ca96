package wickbench.api.method;

/**
 * One version of a method.
 *
 * @param version counted from 1
 */
public record MethodRef(MethodId id, int version) {
    public MethodRef {
        if (version < 1) {
            throw new IllegalArgumentException("expected a version from 1 on, found " + version);
        }
    }

    @Override
    public String toString() {
        return id + " v" + version;
    }
}
