package wickbench.api.attachment;

import java.util.Arrays;

/** What may be attached; told from the bytes, never from the name alone. */
public enum MediaType {
    PNG("image/png"),
    JPEG("image/jpeg"),
    PDF("application/pdf"),
    JSON("application/json"),
    CSV("text/csv"),
    TEXT("text/plain");

    private final String code;

    MediaType(String code) {
        this.code = code;
    }

    /** Returns the name of RFC 6838, such as {@code image/png}. */
    public String code() {
        return code;
    }

    public boolean isPicture() {
        return this == PNG || this == JPEG;
    }

    /**
     * Returns the type with that name.
     *
     * @throws IllegalArgumentException when it is none of these
     */
    public static MediaType of(String code) {
        return Arrays.stream(values())
                .filter(type -> type.code.equals(code))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("expected a type that may be attached, found '" + code + "'"));
    }
}
