package wickbench.tests;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.VOLATILE;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** The laws of the house, over every class that the product holds. */
class LawsTest {

    /** Fewer would mean that the laws look at the wrong place. */
    private static final int AT_LEAST_CLASSES = 500;

    /** The home owns the only clock of the house. */
    private static final String THE_CLOCK = "wickbench.api.home.HomeFolder";

    private static final String SWT = "org.eclipse.swt.widgets.";

    private static final String COMPONENT = "org.osgi.service.component.annotations.Component";
    private static final String REFERENCE = "org.osgi.service.component.annotations.Reference";
    private static final JavaClasses HOUSE = HouseClasses.all();

    @Test
    void the_house_was_found() {
        assertThat(HOUSE).hasSizeGreaterThanOrEqualTo(AT_LEAST_CLASSES);
    }

    @Test
    void classes_look_down_only() {
        hold(
                classes().should(Conditions.lookOnlyAtBundlesBelow()),
                "a floor that looks up cannot be installed without what stands on it");
    }

    @Test
    void databases_are_known_to_the_index_only() {
        hold(
                noClasses()
                        .that(not(resideInAPackage("wickbench.index..")))
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage("java.sql..", "javax.sql..", "org.h2.."),
                "another database must cost one bundle, not all of them");
    }

    @Test
    void windows_are_known_from_the_desk_up() {
        hold(
                noClasses()
                        .that(Conditions.areBelowTheDesk())
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.eclipse.."),
                "the same job must run where there is no display");
    }

    @Test
    void files_are_asked_for_through_one_door() {
        hold(
                noClasses()
                        .that()
                        .doNotHaveFullyQualifiedName("wickbench.shell.SystemDialogs")
                        .should()
                        .dependOnClassesThat()
                        .haveNameMatching("org.eclipse.swt.widgets.(File|Directory)Dialog"),
                "no test can press a button of the system's dialogs");
    }

    @Test
    void rows_look_alike_everywhere() {
        hold(
                noClasses()
                        .that(not(resideInAPackage("wickbench.widgets..")))
                        .should()
                        .callConstructor(SWT + "Table", SWT + "Composite", "int")
                        .orShould()
                        .callConstructor(SWT + "Tree", SWT + "Composite", "int"),
                "ThemedTable and ThemedTree paint what is selected so that marks can still be read");
    }

    @Test
    void no_package_stands_in_a_cycle() {
        hold(
                slices().matching("wickbench.(**)").should().beFreeOfCycles(),
                "what cannot be read alone cannot be changed alone");
    }

    @Test
    void standard_streams_belong_to_the_console() {
        hold(
                noClasses().that(not(resideInAPackage("wickbench.console.."))).should(Conditions.useStandardStreams()),
                "a page or a rule that prints is heard by nobody");
    }

    @Test
    void the_clock_is_asked_in_one_place() {
        hold(
                noClasses().that().doNotHaveFullyQualifiedName(THE_CLOCK).should(Conditions.askTheSystemClock()),
                "a home may run on a simulated clock, and a verdict must not depend on when it is computed");
    }

    @Test
    void nothing_static_changes() {
        hold(
                fields().that().areStatic().should(Conditions.neverChange()),
                "two frameworks in one program must not see each other");
    }

    @Test
    void components_can_be_made_by_the_runtime() {
        hold(
                classes()
                        .that()
                        .areAnnotatedWith(COMPONENT)
                        .should()
                        .bePublic()
                        .andShould()
                        .haveModifier(FINAL)
                        .andShould(Conditions.haveOnePublicConstructor()),
                "the component runtime does not lift access, and fails only when the service is first asked for");
    }

    @Test
    void components_are_hidden() {
        hold(
                classes().that().areAnnotatedWith(COMPONENT).should(Conditions.standInAPackageNobodySees()),
                "others meet a component by its port, never by its class");
    }

    @Test
    void components_are_given_what_they_need_when_made() {
        hold(
                fields().that().areAnnotatedWith(REFERENCE).should().haveModifier(VOLATILE),
                "a component is whole from its first moment; a field is for what comes and goes");
    }

    @Test
    void packages_are_exported_where_they_say_so() {
        hold(
                classes().that().haveSimpleName("package-info").should(Conditions.beExportedAsAnnotated()),
                "to export is an act, written where the package is explained");
    }

    @Test
    void what_is_exported_explains_itself() {
        var explained = HOUSE.stream()
                .filter(type -> type.getSimpleName().equals("package-info"))
                .map(JavaClass::getPackageName)
                .toList();
        var exported = BuiltProduct.houseJars().stream()
                .flatMap(jar -> BundleManifest.of(jar).exports().stream())
                .toList();
        assertThat(explained).as("packages with a package-info").containsAll(exported);
    }

    @Test
    void records_are_never_set() {
        hold(classes().that().areRecords().should(Conditions.haveNoSetter()), "a value does not change");
    }

    @Test
    void names_say_what_a_thing_is() {
        hold(noClasses().should().haveNameMatching(".*(Impl|Manager|Helper|Utils?)"), "such a name says nothing");
    }

    /** What it would break is in {@code PaletteTest}: only the inks are held against the grounds. */
    @Test
    void colours_of_meanings_are_filled_by_widgets_only() {
        hold(
                noClasses()
                        .that(resideInAPackage("wickbench.."))
                        .and(not(resideInAPackage("wickbench.widgets..")))
                        .should()
                        .callMethod("wickbench.widgets.Tone", "mark"),
                "the published colours alone do not all stand out; widgets outline them in ink");
    }

    private static void hold(ArchRule law, String reason) {
        law.because(reason).check(HOUSE);
    }
}
