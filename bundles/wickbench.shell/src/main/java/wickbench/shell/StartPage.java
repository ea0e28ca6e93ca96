package wickbench.shell;

import java.util.Comparator;
import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import wickbench.widgets.Glyph;

/** The page that says what a new desk needs, in order, and what of it is done. A home that was never opened opens on it. */
@Component(
        service = Page.class,
        property = {Page.ID + "=" + StartPage.PLACE, Page.RANK + ":Integer=99"})
public final class StartPage implements Page {
    /** Its place in the rail. */
    static final String PLACE = "first-steps";

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    private volatile List<FirstSteps> sources = List.of();

    /** Uses a source given by hand, where there is no framework. */
    void source(FirstSteps source) {
        sources = List.of(source);
    }

    @Override
    public String title() {
        return ShellWords.get("first.title");
    }

    /** A flag on its staff. */
    @Override
    public Glyph glyph() {
        return pen -> pen.line(5, 3, 5, 21).line(5, 4, 19, 4, 15, 9, 19, 14, 5, 14);
    }

    @Override
    public String guide() {
        return "first-steps.html";
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new StartPart(parent, context, this::steps);
    }

    private List<FirstStep> steps() {
        return sources.stream()
                .flatMap(source -> source.steps().stream())
                .sorted(Comparator.comparingInt(FirstStep::order))
                .toList();
    }
}
