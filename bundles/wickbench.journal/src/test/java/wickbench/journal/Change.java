package wickbench.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;

/** One step of what a program asked of the disk, or of what it told its caller, in the order of time. */
sealed interface Change {

    /** A change of names in a folder; on the disk for certain once that folder was forced. */
    sealed interface Named extends Change {
        /** Returns the folder whose names change. */
        Path folder();
    }

    record FolderMade(Path path) implements Named {
        @Override
        public Path folder() {
            return path.getParent();
        }
    }

    record FileMade(Path path, int file) implements Named {
        @Override
        public Path folder() {
            return path.getParent();
        }
    }

    record Renamed(Path from, Path to) implements Named {
        @Override
        public Path folder() {
            return to.getParent();
        }
    }

    record Removed(Path path) implements Named {
        @Override
        public Path folder() {
            return path.getParent();
        }
    }

    record FolderForced(Path path) implements Change {}

    /** A change of a file's bytes; on the disk for certain once the file was forced, under whatever name it has. */
    sealed interface Filled extends Change {
        int file();
    }

    record Wrote(int file, long at, byte[] bytes) implements Filled {}

    record Truncated(int file, long length) implements Filled {}

    record Forced(int file) implements Change {}

    /** The journal was asked to append entries with these ids. */
    record Asked(List<UUID> ids) implements Change {
        public Asked {
            ids = List.copyOf(ids);
        }
    }

    /** It answered: kept, or refused. */
    record Answered(boolean kept) implements Change {}
}
