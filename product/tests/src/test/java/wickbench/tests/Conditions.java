package wickbench.tests;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.time.Clock;
import java.time.InstantSource;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What the laws ask of classes and fields. */
final class Conditions {

    private static final List<BundleManifest> BUNDLES =
            BuiltProduct.houseJars().stream().map(BundleManifest::of).toList();
    private static final List<String> NAMES =
            BUNDLES.stream().map(BundleManifest::symbolicName).toList();
    private static final Map<String, Set<String>> EXPORTS =
            BUNDLES.stream().collect(Collectors.toMap(BundleManifest::symbolicName, BundleManifest::exports));

    /** Types whose very purpose is to change. */
    private static final Set<String> CHANGEABLE = Set.of(
            "java.util.HashMap",
            "java.util.TreeMap",
            "java.util.LinkedHashMap",
            "java.util.EnumMap",
            "java.util.concurrent.ConcurrentMap",
            "java.util.ArrayList",
            "java.util.LinkedList",
            "java.util.HashSet",
            "java.util.TreeSet",
            "java.util.Queue",
            "java.lang.ThreadLocal",
            "java.lang.StringBuilder",
            "java.util.Random",
            "java.util.concurrent.Executor");

    /** The window stands beside the page contract that it serves. */
    private static final String WINDOW = "wickbench.shell";

    private Conditions() {}

    static ArchCondition<JavaClass> lookOnlyAtBundlesBelow() {
        return condition(
                "look only at bundles below",
                (type, events) -> type.getDirectDependenciesFromSelf().stream()
                        .filter(dependency -> !looksDown(
                                owner(type), owner(dependency.getTargetClass().getBaseComponentType())))
                        .forEach(dependency ->
                                events.add(SimpleConditionEvent.violated(type, dependency.getDescription()))));
    }

    static DescribedPredicate<JavaClass> areBelowTheDesk() {
        return DescribedPredicate.describe("are below the desk", type -> !Floors.seesWindows(owner(type)));
    }

    static ArchCondition<JavaClass> useStandardStreams() {
        return access(
                "use standard streams",
                access -> access.getTargetOwner().isEquivalentTo(System.class)
                                && Set.of("out", "err", "in", "console").contains(access.getName())
                        || access.getTargetOwner().isAssignableTo(Throwable.class)
                                && access.getTarget().getFullName().endsWith(".printStackTrace()"));
    }

    static ArchCondition<JavaClass> askTheSystemClock() {
        return access(
                "ask the system clock",
                access -> access.getName().equals("now")
                                && access.getTargetOwner().getPackageName().equals("java.time")
                        || access.getName().equals("currentTimeMillis")
                        || access.getName().startsWith("system")
                                && (access.getTargetOwner().isEquivalentTo(Clock.class)
                                        || access.getTargetOwner().isEquivalentTo(InstantSource.class))
                        || access.getTargetOwner().isEquivalentTo(Date.class)
                                && access.getName().equals("<init>"));
    }

    static ArchCondition<JavaField> neverChange() {
        return new ArchCondition<>("be final and of a type that does not change") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                boolean steady = field.getModifiers().contains(JavaModifier.FINAL)
                        && !field.getRawType().getPackageName().startsWith("java.util.concurrent.atomic")
                        && CHANGEABLE.stream().noneMatch(field.getRawType()::isAssignableTo);
                events.add(new SimpleConditionEvent(field, steady, field.getDescription()));
            }
        };
    }

    static ArchCondition<JavaClass> haveOnePublicConstructor() {
        return condition("have one public constructor", (type, events) -> {
            long visible = type.getConstructors().stream()
                    .filter(each -> each.getModifiers().contains(JavaModifier.PUBLIC))
                    .count();
            events.add(new SimpleConditionEvent(
                    type, visible == 1, type.getDescription() + " has " + visible + " public constructors"));
        });
    }

    static ArchCondition<JavaClass> haveNoSetter() {
        return condition(
                "have no setter",
                (type, events) -> type.getMethods().stream()
                        .filter(method -> !method.getRawParameterTypes().isEmpty()
                                && method.getName().matches("set[A-Z].*"))
                        .forEach(setter -> events.add(SimpleConditionEvent.violated(type, setter.getDescription()))));
    }

    static ArchCondition<JavaClass> standInAPackageNobodySees() {
        return condition("stand in a package that is not exported and be named only there", (type, events) -> {
            boolean exported = EXPORTS.getOrDefault(owner(type), Set.of()).contains(type.getPackageName())
                    && !type.getPackageName().equals(WINDOW);
            boolean named = type.getDirectDependenciesToSelf().stream()
                    .anyMatch(from -> !from.getOriginClass().getPackageName().equals(type.getPackageName()));
            events.add(new SimpleConditionEvent(
                    type, !exported && !named, type.getDescription() + ": exported " + exported + ", named " + named));
        });
    }

    static ArchCondition<JavaClass> beExportedAsAnnotated() {
        return condition("be exported exactly if annotated so", (type, events) -> {
            boolean says = type.isAnnotatedWith("org.osgi.annotation.bundle.Export");
            boolean does = EXPORTS.getOrDefault(owner(type), Set.of()).contains(type.getPackageName());
            events.add(new SimpleConditionEvent(
                    type, says == does, type.getDescription() + ": says " + says + ", does " + does));
        });
    }

    private static boolean looksDown(String from, String to) {
        return to.isEmpty() || from.equals(to) || Floors.below(from).contains(to);
    }

    private static String owner(JavaClass type) {
        return Floors.ownerOf(type.getPackageName(), NAMES).orElse("");
    }

    private static ArchCondition<JavaClass> access(String what, Predicate<JavaAccess<?>> forbidden) {
        return condition(
                what,
                (type, events) -> type.getAccessesFromSelf()
                        .forEach(access -> events.add(
                                new SimpleConditionEvent(type, forbidden.test(access), access.getDescription()))));
    }

    private static ArchCondition<JavaClass> condition(String what, Check check) {
        return new ArchCondition<>(what) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                check.on(type, events);
            }
        };
    }

    private interface Check {
        void on(JavaClass type, ConditionEvents events);
    }
}
