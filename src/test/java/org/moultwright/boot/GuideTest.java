package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.boot.command.Commands;
import org.moultwright.workflow.AdvisedException;

/** The guide's worked examples give what the guide says; every error code is explained; links lead somewhere. */
class GuideTest {
    static final Path GUIDE = Path.of("docs", "guide");
    private static final GuidePage TROUBLESHOOTING = GuidePage.of(Path.of("docs", "troubleshooting.md"));

    /** The keeper's own files, as the guide names them. */
    private static final String OWN_FILE = "my-";

    @TempDir
    Path folder;

    static Stream<GuidePage> worked() {
        return GuidePage.in(GUIDE).stream().filter(page -> !page.examples().isEmpty());
    }

    static Stream<GuidePage> allPages() {
        return Stream.concat(
                Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")).map(GuidePage::of),
                GuidePage.in(Path.of("docs")).stream());
    }

    @Test
    void theGuideHasWorkedExamples() {
        assertThat(worked()).hasSizeGreaterThanOrEqualTo(6);
    }

    @ParameterizedTest
    @MethodSource("worked")
    void commandsAnswerAsWritten(GuidePage page) {
        for (GuidePage.Example example : page.examples()) {
            assertThat(answer(example.arguments()))
                    .as("%s: %s", page.file(), String.join(" ", example.arguments()))
                    .isEqualTo(example.answer());
        }
    }

    @Test
    void everyCodeOfTheProgramHasItsEntryAndNoOther() {
        List<String> codes = codesOfTheProgram();
        assertThat(codes).contains("ST-6", "DE-3", "DO-7").doesNotHaveDuplicates();
        assertThat(TROUBLESHOOTING.headings())
                .filteredOn(heading -> heading.matches("[A-Z]{2}-[0-9]+"))
                .containsExactlyInAnyOrderElementsOf(codes);
    }

    @ParameterizedTest
    @MethodSource("allPages")
    void linksLeadSomewhere(GuidePage page) {
        assertThat(page.links())
                .filteredOn(link -> !link.contains("://"))
                .allSatisfy(link -> leadsSomewhere(page, link));
    }

    private static void leadsSomewhere(GuidePage page, String link) {
        String[] parts = link.split("#", 2);
        Path target = parts[0].isEmpty() ? page.file() : page.file().resolveSibling(parts[0]);
        assertThat(target).exists();
        if (parts.length == 2) {
            assertThat(GuidePage.of(target).headings())
                    .extracting(GuideTest::anchor)
                    .contains(parts[1]);
        }
    }

    /** How a heading is linked to: small letters, hyphens for spaces, no other signs. */
    private static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 _-]", "").replace(' ', '-');
    }

    private static List<String> codesOfTheProgram() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.moultwright").stream()
                        .filter(type -> type.isEnum() && type.isAssignableTo(AdvisedException.Reason.class))
                        .map(JavaClass::reflect)
                        .flatMap(type -> Stream.of(type.getEnumConstants()))
                        .map(reason -> ((AdvisedException.Reason) reason).code())
                        .toList();
    }

    /** What a command prints; the keeper's own files are in this test's folder. */
    private String answer(List<String> arguments) {
        String own = folder.resolve(OWN_FILE).toString();
        String[] told = arguments.stream()
                .map(argument -> argument.startsWith(OWN_FILE) ? own + argument.substring(OWN_FILE.length()) : argument)
                .toArray(String[]::new);
        StringWriter said = new StringWriter();
        PrintWriter terminal = new PrintWriter(said);
        Commands.run(new OpenWorkbench((fault, opening) -> {}), terminal, terminal, told);
        return said.toString().replace(own, OWN_FILE).replace("\r\n", "\n").strip();
    }
}
