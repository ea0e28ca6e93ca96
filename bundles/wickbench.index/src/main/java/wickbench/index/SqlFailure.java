package wickbench.index;

import java.sql.SQLException;
import java.util.Set;

/** A statement failed although the file is sound. */
final class SqlFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;
    /** FILE_CORRUPTED, FILE_VERSION_ERROR and DATABASE_IS_CLOSED, which H2 does to itself when its store is broken. */
    private static final Set<Integer> DAMAGED = Set.of(90030, 90048, 90098);

    /** LOCK_TIMEOUT. */
    private static final int HELD = 50200;
    /** DUPLICATE_KEY. */
    private static final int TWICE = 23505;

    private static final String STORE = "org.h2.mvstore.";

    private SqlFailure(String message, SQLException cause) {
        super(message, cause);
    }

    /** Tells apart what the caller did wrong from what the file can no longer do. */
    static RuntimeException of(String doing, SQLException e) {
        return damaged(e) ? new Damaged(e) : new SqlFailure(firstLine(e) + " [" + doing + "]", e);
    }

    /**
     * Does the same for a change of rows.
     *
     * <p>One thread alone changes rows, so one that somebody else holds is held by a transaction of a program that was killed: H2 left it
     * in the file, and nobody will ever end it. Such a row may also look like one of whoever comes next; then it is there twice.
     *
     * @param leftOpen whether the file was written by a program that did not come to close it
     */
    static RuntimeException ofChange(String sql, SQLException e, boolean leftOpen) {
        int code = e.getErrorCode();
        return code == HELD || leftOpen && code == TWICE ? new Damaged(e) : of(sql, e);
    }

    static String firstLine(Throwable e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse(e.toString());
    }

    private static boolean damaged(SQLException e) {
        return DAMAGED.contains(e.getErrorCode())
                || e.getCause() != null && e.getCause().getClass().getName().startsWith(STORE);
    }

    /** The index file itself is broken and has to be made again. */
    static final class Damaged extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Damaged(Exception cause) {
            super(firstLine(cause), cause);
        }
    }
}
