package wickbench.training.face;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.chart.Chart;
import wickbench.api.person.People;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.training.Competences;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.training.Round;
import wickbench.training.Rounds;
import wickbench.training.TrainingPapers;
import wickbench.training.book.Said;

/** Makes reports of the training book and prints them. */
@Component
public final class PrintedTraining implements TrainingPapers {
    private final Competences book;
    private final Rounds rounds;
    private final People people;
    private final List<ReportPrinter> printers;

    @Activate
    public PrintedTraining(
            @Reference Competences book,
            @Reference Rounds rounds,
            @Reference People people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ReportPrinter> printers) {
        this.book = book;
        this.rounds = rounds;
        this.people = people;
        this.printers = List.copyOf(printers);
    }

    private Names names() {
        return id -> people.find(id).map(person -> person.display()).orElse(id.value());
    }

    private Reports reports() {
        return new Reports(book.zone());
    }

    @Override
    public Report matrix(Matrix matrix) {
        return reports().matrix(matrix);
    }

    @Override
    public Report person(PersonRecord record) {
        return reports().person(record, names());
    }

    @Override
    public Report certificate(PersonRecord record, Instant at) {
        if (record.competences().stream().noneMatch(each -> each.state().mayTest())) {
            throw Said.refused("certificate.none", record.person());
        }
        return reports().certificate(record, names(), at);
    }

    @Override
    public Report round(Round round) {
        return new RoundReport(book.zone()).of(round, rounds.agreement(round.id()), rounds.truth(round.id()));
    }

    @Override
    public Chart timeLine(PersonRecord record) {
        return new TimeLine(book.zone()).of(record);
    }

    @Override
    public void print(Report report, Path out) {
        PrintedFile.write(out, printers, report);
    }
}
