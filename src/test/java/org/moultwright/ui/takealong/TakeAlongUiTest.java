package org.moultwright.ui.takealong;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.document.PdfSitterSheets;
import org.moultwright.document.ReadCalendar;
import org.moultwright.domain.label.Paper;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Taking the forecast along by keys alone, the dialogue replaced by a file. */
@ExtendWith(ApplicationExtension.class)
class TakeAlongUiTest {
    @TempDir
    static Path folder;

    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final ObjectProperty<Vocabulary> vocabulary = new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY);
    private final PlanChoices plans = ChosenPlans.usual();
    private Instant clock = RoomFixture.NOW;
    private Optional<Path> chosen = Optional.empty();
    private String proposed = "";

    @Start
    void start(Stage stage) {
        TakeAlong takeAlong = new TakeAlong(
                new TakeAlongDesk(
                        room,
                        plans,
                        new IcsCalendarFiles(),
                        this::choose,
                        new PdfSitterSheets(),
                        this::choose,
                        new InlineRunner(),
                        () -> clock,
                        new DayWords(RoomFixture.ZONE),
                        vocabulary),
                TakeAlongPictures.sitter(room.get(), plans));
        StackPane forecast = new StackPane(takeAlong.button());
        Parent pages = (Parent) takeAlong
                .over(new PlainScreen(
                        new ScreenName("forecast", "Forecast", Sign.FORECAST),
                        forecast,
                        () -> forecast.getChildren().get(0).requestFocus(),
                        List.of()))
                .node();
        Appearance appearance = new Appearance();
        Scene scene = new Scene(pages, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        forecast.getChildren().get(0).requestFocus();
    }

    private Optional<Path> choose(String name) {
        proposed = name;
        return chosen;
    }

    @Test
    void theSheetIsSavedByKeysAlone(FxRobot robot) throws IOException {
        chosen = Optional.of(folder.resolve("sitter.pdf"));
        robot.press(KeyCode.CONTROL).type(KeyCode.T).release(KeyCode.CONTROL);
        robot.write("9 May 2026").type(KeyCode.TAB);
        robot.write("16 May 2026").type(KeyCode.TAB);
        robot.write("0123 456").type(KeyCode.TAB);
        press(robot, "Save the sheet");
        assertThat(proposed).isEqualTo("sitter-2026-05-09.pdf");
        assertThat(texts(robot)).contains("Sitter's sheet saved: " + chosen.get());
        assertThat(pdf(chosen.get()))
                .contains("Saturday 9 May to Saturday 16 May", "Call: 0123 456", "28.3 °C (INC-1)")
                .contains("A1 box 1, INC-1 Slings are in it already. ")
                .contains("C1 box 1, INC-1 Nothing special.")
                .contains("Slings are the small spiders that walk about freely.");
        assertThat(plans.settings().phone()).isEqualTo("0123 456");
        robot.type(KeyCode.ESCAPE);
        assertThat(texts(robot)).contains("Take along").doesNotContain("Sitter's sheet");
    }

    @Test
    void withoutANumberThereIsRoomToWriteIt(FxRobot robot) throws IOException {
        chosen = Optional.of(folder.resolve("no-number.pdf"));
        robot.interact(() -> {
            plans.awayFromProperty().set(LocalDate.of(2026, 5, 9));
            plans.awayToProperty().set(LocalDate.of(2026, 5, 9));
            plans.keep(plans.settings().withPaper(Paper.LETTER));
        });
        open(robot);
        press(robot, "Save the sheet");
        assertThat(pdf(chosen.get())).contains("Saturday 9 May Call: Every day");
    }

    @Test
    void daysInTheWrongOrderAreSaidAndNothingIsSaved(FxRobot robot) {
        open(robot);
        assertThat(texts(robot)).contains("Write the first and the last day away.");
        robot.interact(() -> {
            plans.awayFromProperty().set(LocalDate.of(2026, 5, 16));
            plans.awayToProperty().set(LocalDate.of(2026, 5, 9));
        });
        assertThat(texts(robot)).contains("The last day away is before the first. Change one of them.");
        assertThat(button(robot, "Save the sheet").isDisabled()).isTrue();
    }

    @Test
    void aCalendarSavedAgainChangesTheEarlierOne(FxRobot robot) throws IOException {
        chosen = Optional.of(folder.resolve("moultwright.ics"));
        open(robot);
        press(robot, "Save the calendar");
        assertThat(proposed).isEqualTo("moultwright.ics");
        assertThat(texts(robot)).contains("Calendar saved: " + chosen.get());
        Map<String, Map<String, String>> before = events(chosen.get());
        // Four trays of four events, three broods of two orders.
        assertThat(before).hasSize(4 * 4 + 3 * 2);
        assertThat(before.values())
                .extracting(event -> event.get("SUMMARY"))
                .contains("A1: first slings seen", "B1: half are slings", "B1: separate the slings")
                .contains("Order pots and labels for CC-26-B", "Order food for CC-26-C");

        clock = clock.plusSeconds(3600);
        robot.interact(() -> {
            vocabulary.set(Vocabulary.N_L_COUNTING);
            plans.keep(plans.settings().withPotDays(1));
        });
        press(robot, "Save the calendar");
        Map<String, Map<String, String>> after = events(chosen.get());
        assertThat(after.keySet()).isEqualTo(before.keySet());
        assertThat(after.values()).extracting(event -> event.get("SUMMARY")).contains("B1: half are L1s");
        after.forEach((uid, event) -> assertThat(Integer.parseInt(event.get("SEQUENCE")))
                .isEqualTo(60 + Integer.parseInt(before.get(uid).get("SEQUENCE"))));
    }

    /** B1's half: between 9 and 13 May by the invented forecast, so the first day not in it is the 14th. */
    @Test
    void aWindowIsWholeDaysWithItsWordsBeside(FxRobot robot) throws IOException {
        chosen = Optional.of(folder.resolve("window.ics"));
        open(robot);
        press(robot, "Save the calendar");
        Map<String, String> half = events(chosen.get()).values().stream()
                .filter(event -> event.get("SUMMARY").equals("B1: half are slings"))
                .findFirst()
                .orElseThrow();
        assertThat(ReadCalendar.date(half, "DTSTART")).isEqualTo("2026-05-09");
        assertThat(ReadCalendar.date(half, "DTEND")).isEqualTo("2026-05-14");
        assertThat(half.get("DESCRIPTION")).isEqualTo("""
                        80 % window 9 to 13 May, middle 11 May: one time in ten earlier, one time in ten later.
                        Brood CC-26-B (Chromatopelma cyaneopubescens), box 1, INC-1.
                        Told on 3 May from the counts up to then. Save the file again for newer dates.""");
    }

    @Test
    void whatCannotBeWrittenSaysWhyAndWhatToDo(FxRobot robot) {
        chosen = Optional.of(folder.resolve("gone").resolve("moultwright.ics"));
        open(robot);
        press(robot, "Save the calendar");
        assertThat(texts(robot))
                .anyMatch(words -> words.startsWith("Not saved: there is no folder")
                        && words.endsWith("Choose another folder. [DO-1]"));
        robot.type(KeyCode.ESCAPE);
        open(robot);
        assertThat(texts(robot)).noneMatch(words -> words.startsWith("Not saved"));
    }

    @Test
    void whereTooLittleIsKnownNothingIsGuessed(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(RoomFixture.fresh()))));
        open(robot);
        assertThat(texts(robot))
                .contains("Too early to say when anything happens: there is nothing for a calendar yet.");
        assertThat(button(robot, "Save the calendar").isDisabled()).isTrue();
        robot.interact(() -> room.set(RoomView.EMPTY));
        assertThat(texts(robot)).contains("No tray holds animals, so there is nothing to look after yet.");
    }

    @Test
    void everyStateIsPictured() {
        ScreenShots.of("take-along", 1188, 752, look -> TakeAlongPictures.planned());
        ScreenShots.of("take-along-refused", 1188, 752, look -> TakeAlongPictures.refused());
        ScreenShots.of("take-along-empty", 1188, 752, look -> TakeAlongPictures.empty());
    }

    private static void open(FxRobot robot) {
        robot.type(KeyCode.SPACE);
        assertThat(texts(robot)).contains("Sitter's sheet");
    }

    private static void press(FxRobot robot, String word) {
        robot.interact(button(robot, word)::requestFocus);
        robot.type(KeyCode.SPACE);
    }

    private static Button button(FxRobot robot, String word) {
        return robot.lookup((Node node) -> node instanceof Button button && word.equals(button.getText()))
                .queryButton();
    }

    private static List<String> texts(FxRobot robot) {
        return robot.lookup((Node node) -> node instanceof Labeled).queryAllAs(Labeled.class).stream()
                .filter(Node::isVisible)
                .map(Labeled::getText)
                .filter(Objects::nonNull)
                .toList();
    }

    private static Map<String, Map<String, String>> events(Path file) throws IOException {
        return ReadCalendar.events(Files.readAllBytes(file)).stream()
                .collect(Collectors.toMap(event -> event.get("UID"), Function.identity()));
    }

    private static String pdf(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
