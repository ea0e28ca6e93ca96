package wickbench.training;

import java.util.List;
import java.util.Optional;
import wickbench.api.person.PersonId;

/**
 * Everything about one person's competence.
 *
 * @param happenings oldest first
 * @param scores of blind rounds, oldest first
 */
public record PersonRecord(
        PersonId person,
        List<Competence> competences,
        Optional<Sight> sight,
        List<Happening> happenings,
        List<RoundScore> scores) {
    public PersonRecord {
        competences = List.copyOf(competences);
        happenings = List.copyOf(happenings);
        scores = List.copyOf(scores);
    }

    /**
     * How they did in one round.
     *
     * @param round with its method and when it was closed
     */
    public record RoundScore(Round round, ReaderScore score) {}
}
