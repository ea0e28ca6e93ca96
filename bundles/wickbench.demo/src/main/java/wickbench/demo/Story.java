package wickbench.demo;

import java.time.Instant;
import java.util.List;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.RecordedReading;

/** The chapters together, over what is usual. A new chapter is one line here. */
record Story(List<Chapter> chapters) {
    private static final double USUALLY_MISSED = 0.03;
    private static final int USUAL_EDITION = 3;

    static Story of(Plant plant, Span span, Lots lots) {
        return new Story(
                List.of(StubbornChangeover.in(span), PoorLot.in(plant, span, lots), FaintLineReader.in(plant, span)));
    }

    double moreResidue(Plant.Point point, Plant.Kit kit, Instant when) {
        return chapters.stream()
                .mapToDouble(chapter -> chapter.moreResidue(point, kit, when))
                .sum();
    }

    double invalidRate(Plant.Kit kit, LotId lot) {
        double rate = kit.invalidRate();
        for (Chapter chapter : chapters) {
            rate = chapter.invalidRate(lot, rate);
        }
        return rate;
    }

    double missesFaint(PersonId reader, Instant when) {
        double rate = USUALLY_MISSED;
        for (Chapter chapter : chapters) {
            rate = chapter.missesFaint(reader, rate, when);
        }
        return rate;
    }

    boolean observed(PersonId operator, Instant when) {
        return chapters.stream().anyMatch(chapter -> chapter.observed(operator, when));
    }

    int procedureEdition(Plant.Line line, Instant when) {
        int edition = USUAL_EDITION;
        for (Chapter chapter : chapters) {
            edition = chapter.procedureEdition(line, edition, when);
        }
        return edition;
    }

    void hear(RecordedReading recorded) {
        chapters.forEach(chapter -> chapter.hear(recorded));
    }

    List<Told> told() {
        return chapters.stream().map(Chapter::told).toList();
    }
}
