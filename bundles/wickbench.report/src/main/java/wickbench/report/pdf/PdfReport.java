package wickbench.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import wickbench.api.report.Report;
import wickbench.api.report.Report.Paper;
import wickbench.api.report.Section;
import wickbench.report.ReportWords;
import wickbench.report.text.ScreenFonts;
import wickbench.report.text.Typeface;

/** Lays one report on pages. The same report in the same frame gives the same bytes. */
final class PdfReport {
    private static final int LONGEST_TITLE = 200;
    private static final double SOME_LINES = 40;

    /** By how much a page that is to hold everything grows until it does. */
    private static final double LONGER = 40;

    /** Longer, and it would be smaller than seven tenths and hard to read. */
    private static final double LONGEST = 360;

    private Optional<FigurePrint> figures = Optional.empty();

    /** @param printedAt milliseconds since 1970 UTC */
    void print(Report report, Chrome chrome, long printedAt, OutputStream out) throws IOException {
        double longer = 0;
        while (report.paper() == Paper.ONE_PAGE && longer <= LONGEST && pages(report, chrome, longer) > 1) {
            longer += LONGER;
        }
        try (PDDocument document = new PDDocument()) {
            Faces faces = lay(report, chrome, longer > LONGEST ? 0 : longer, document);
            describe(document, faces.face(Typeface.PLAIN).visible().atMost(report.title(), LONGEST_TITLE), printedAt);
            document.save(out);
        }
    }

    private int pages(Report report, Chrome chrome, double longer) throws IOException {
        try (PDDocument document = new PDDocument()) {
            lay(report, chrome, longer, document);
            return document.getNumberOfPages();
        }
    }

    /** @param longer how much longer than A4 a page is before it is made smaller */
    private Faces lay(Report report, Chrome chrome, double longer, PDDocument document) throws IOException {
        Faces faces = Faces.of(document);
        Frame frame = new Frame(chrome, report.title(), longer);
        figures = Optional.empty();
        Pages pages = new Pages(document, faces, frame.footer());
        new TextPrint(pages).title(report.title());
        sections(report.sections(), pages);
        if (chrome.seals().size() > Frame.WITH_CODES) {
            seals(chrome, pages);
        }
        pages.around(frame);
        if (longer > 0) {
            pages.shrink(longer);
        }
        return faces;
    }

    private void sections(List<Section> sections, Pages pages) throws IOException {
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i) instanceof Section.Heading heading) {
                new TextPrint(pages).heading(heading.text(), i + 1 < sections.size() ? least(sections.get(i + 1)) : 0);
            } else if (sections.get(i) instanceof Section.StripFigure strip) {
                List<Section.StripFigure> abreast = new ArrayList<>(List.of(strip));
                while (i + 1 < sections.size() && sections.get(i + 1) instanceof Section.StripFigure next) {
                    abreast.add(next);
                    i++;
                }
                new StripPrint(pages).print(abreast);
            } else {
                print(sections.get(i), pages);
            }
        }
    }

    /** Returns how much of a section must stand below its heading. */
    private static double least(Section section) {
        if (section instanceof Section.Figure) {
            return FigurePrint.HEIGHT;
        }
        return section instanceof Section.StripFigure ? StripPrint.WHOLE : SOME_LINES;
    }

    private void print(Section section, Pages pages) throws IOException {
        if (section instanceof Section.Paragraph paragraph) {
            new TextPrint(pages).paragraph(paragraph.text());
        } else if (section instanceof Section.Facts facts) {
            new TextPrint(pages).facts(facts);
        } else if (section instanceof Section.Notice notice) {
            new NoticePrint(pages).print(notice);
        } else if (section instanceof Section.Table table) {
            TablePrint.print(pages, table);
        } else if (section instanceof Section.Figure figure) {
            figures(pages).print(figure.chart());
        } else if (section instanceof Section.Labels labels) {
            new LabelPrint(pages).print(labels);
        }
    }

    /** The drawing fonts take a moment to load, and few reports need them. */
    private FigurePrint figures(Pages pages) {
        FigurePrint print = figures.orElseGet(() -> new FigurePrint(pages, ScreenFonts.load()));
        figures = Optional.of(print);
        return print;
    }

    private static void seals(Chrome chrome, Pages pages) throws IOException {
        new TextPrint(pages).heading(ReportWords.get("pdf.seal.heading"), SealPrint.HEIGHT);
        for (StationSeal seal : chrome.seals()) {
            pages.need(SealPrint.HEIGHT + 4);
            SealPrint.draw(pages.pen(), seal, pages.top());
            pages.down(SealPrint.HEIGHT + 4);
        }
    }

    private static void describe(PDDocument document, String title, long printedAt) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Wickbench");
        Calendar when = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        when.setTimeInMillis(printedAt);
        about.setCreationDate(when);
        document.setDocumentInformation(about);
        // else the platform's clock and chance go into the file
        document.setDocumentId(printedAt);
        PDViewerPreferences show =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        show.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(show);
        document.getDocumentCatalog().setLanguage(ReportWords.get("language"));
    }
}
