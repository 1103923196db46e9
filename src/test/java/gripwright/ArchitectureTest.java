package gripwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The walls of the house: which room may enter which. */
class ArchitectureTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gripwright");

    /** Room, and the rooms of ours that it may enter; as in DEVELOPERS.md. */
    private static Map<String, List<String>> walls() {
        Map<String, List<String>> walls = new LinkedHashMap<>();
        walls.put("units", List.of());
        walls.put("model", List.of("units"));
        walls.put("balance", List.of("units", "model"));
        walls.put("statistics", List.of());
        walls.put("comparison", List.of("units", "model", "statistics", "balance"));
        walls.put("planning", List.of("units", "model", "statistics", "balance", "comparison"));
        walls.put("intake", List.of("units", "model"));
        walls.put("session", List.of("units", "model"));
        walls.put("storage", List.of("units", "model", "session"));
        walls.put("charts", List.of("units", "model", "comparison", "balance"));
        walls.put("report", List.of("units", "model", "comparison", "balance", "charts"));
        walls.put("desktop", List.of("units", "model", "balance", "statistics", "comparison", "planning", "intake",
                "session", "charts", "report"));
        return walls;
    }

    @TestFactory
    List<DynamicTest> eachRoomEntersOnlyTheRoomsItMay() {
        List<DynamicTest> tests = new ArrayList<>();
        walls().forEach((room, open) -> tests.add(DynamicTest.dynamicTest(room, () -> {
            List<String> allowed = new ArrayList<>(open.stream().map(ArchitectureTest::inside).toList());
            allowed.add(inside(room));
            noClasses().that().resideInAPackage(inside(room))
                    .should().dependOnClassesThat(
                            com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage("gripwright..")
                                    .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                            com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage(
                                                    allowed.toArray(String[]::new)))))
                    .allowEmptyShould(true)
                    .check(PROGRAM);
        })));
        return tests;
    }

    private static String inside(String room) {
        return "gripwright." + room + "..";
    }

    @Test
    void everyRoomIsOnThePlan() {
        List<String> rooms = PROGRAM.stream().map(type -> type.getPackageName().split("\\."))
                .filter(parts -> parts.length > 1).map(parts -> parts[1]).distinct().toList();
        List<String> planned = new ArrayList<>(walls().keySet());
        planned.add("app");
        assertThat(planned).containsAll(rooms);
    }

    @Test
    void roomsHaveNoCycles() {
        slices().matching("gripwright.(*)..").should().beFreeOfCycles().check(PROGRAM);
    }

    @Test
    void theWindowToolkitStaysInTheWindow() {
        noClasses().that().resideOutsideOfPackages("gripwright.desktop..", "gripwright.app..")
                .should().dependOnClassesThat().resideInAPackage("javafx..").check(PROGRAM);
    }

    @Test
    void viewModelsKnowNoScene() {
        noClasses().that().haveSimpleNameEndingWith("ViewModel")
                .should().dependOnClassesThat().resideInAPackage("javafx.scene..").allowEmptyShould(true)
                .check(PROGRAM);
    }

    @Test
    void jacksonStaysInStorageAndIntake() {
        noClasses().that().resideOutsideOfPackages("gripwright.storage..", "gripwright.intake..")
                .should().dependOnClassesThat().resideInAPackage("com.fasterxml..").check(PROGRAM);
    }

    @Test
    void nobodyKeepsStaticMutableState() {
        fields().that().areStatic().and().areDeclaredInClassesThat().resideInAPackage("gripwright..")
                .should().beFinal().allowEmptyShould(true).check(PROGRAM);
    }

    @Test
    void onlyTheAppPrints() {
        noClasses().that().resideOutsideOfPackage("gripwright.app..")
                .should().accessField(System.class, "out").orShould().accessField(System.class, "err")
                .check(PROGRAM);
    }

    @Test
    void namesSayWhatThingsAre() {
        classes().that().resideInAPackage("gripwright..")
                .should().haveSimpleNameNotEndingWith("Manager")
                .andShould().haveSimpleNameNotEndingWith("Helper")
                .andShould().haveSimpleNameNotEndingWith("Util")
                .andShould().haveSimpleNameNotEndingWith("Utils")
                .andShould().haveSimpleNameNotEndingWith("Impl")
                .check(PROGRAM);
    }
}
