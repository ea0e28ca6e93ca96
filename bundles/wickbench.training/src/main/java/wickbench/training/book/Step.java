package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.training.Terms;

/** Something that moves a competence, or the terms by which it lapses. */
sealed interface Step {

    Instant at();

    /** The site's terms changed. */
    record Termed(Instant at, Terms terms) implements Step {}

    /** A strip was read by this method. */
    record Tested(Instant at) implements Step {}

    /** A version of the method came into force; empty when the method was withdrawn. */
    record Issued(Instant at, Optional<Integer> version) implements Step {}

    /**
     * Authorised or restored.
     *
     * @param version the version in force where it was decided, if one was known there
     * @param answers the suspensions that a restoration answers
     */
    record Authorised(
            Instant at,
            UUID entry,
            LocalDate until,
            Optional<Integer> version,
            String reason,
            boolean restores,
            Set<UUID> answers)
            implements Step {}

    /** Suspended, for this method or for every one. */
    record Suspended(Instant at, UUID entry, String reason, boolean everyMethod) implements Step {}

    /** Read and understood. */
    record Acknowledged(Instant at, UUID entry, int version) implements Step {}
}
