package org.moultwright.ui.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.AlarmTurn.ACKNOWLEDGED;
import static org.moultwright.domain.AlarmTurn.ANNOUNCED_AGAIN;
import static org.moultwright.domain.AlarmTurn.RAISED;
import static org.moultwright.domain.AlarmTurn.SNOOZED;
import static org.moultwright.domain.AlarmTurn.SNOOZE_ENDED;

import java.time.Duration;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.round.RoundPictures;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class AlarmBannerUiTest {
    private final InventedWatch invented = new InventedWatch();

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        Scene scene = new Scene(RoundPictures.under(invented.model), 1280, 800);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void anAlarmSaysWhereWhatSinceWhenAndHowMuch(FxRobot robot) {
        assertThat(banner(robot).isVisible()).isFalse();
        robot.interact(() -> invented.tooWarm(false));
        assertThat(banner(robot).isVisible()).isTrue();
        assertThat(banner(robot).getAccessibleText())
                .isEqualTo("Alarm: box 1 too warm 30.4 °C. Since 20:25, 5 min ago, raised at 30.4 °C. "
                        + "Look whether the heater is stuck on; open the door a little.");
        assertThat(invented.model.lineProperty().get().state()).isEqualTo("Alarm");
    }

    @Test
    void oneKeySaysItWasSeenAndTheBannerGoes(FxRobot robot) {
        robot.interact(() -> invented.tooWarm(false));
        robot.type(KeyCode.F6);
        assertThat(banner(robot).isVisible()).isFalse();
        assertThat(turns()).containsExactly(RAISED, ACKNOWLEDGED);
        assertThat(invented.model.lineProperty().get().state()).isEqualTo("1 alarm, seen");
        robot.type(KeyCode.F6);
        assertThat(turns()).hasSize(2);
    }

    @Test
    void quietEndsAndItIsHeardAgain(FxRobot robot) {
        robot.interact(() -> invented.tooWarm(false));
        robot.type(KeyCode.F7);
        assertThat(banner(robot).isVisible()).isFalse();
        assertThat(invented.model.lineProperty().get().state()).isEqualTo("1 alarm, quiet until 20:45");
        int rung = invented.rung.size();
        robot.interact(() -> stayWarm(Duration.ofMinutes(14)));
        assertThat(invented.rung).hasSize(rung);
        robot.interact(() -> stayWarm(Duration.ofMinutes(2)));
        assertThat(banner(robot).isVisible()).isTrue();
        assertThat(turns()).containsExactly(RAISED, SNOOZED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
        assertThat(invented.rung.size()).isGreaterThan(rung);

        robot.type(KeyCode.F8);
        assertThat(journal())
                .last()
                .satisfies(entry ->
                        assertThat(entry.quietUntil()).contains(entry.at().plus(Duration.ofHours(1))));
    }

    @Test
    void theToneComesAgainEveryTenSecondsUntilItIsSeen(FxRobot robot) {
        robot.interact(() -> invented.tooWarm(false));
        assertThat(invented.rung).hasSizeBetween(28, 31);
        assertThat(Duration.between(invented.rung.get(0), invented.rung.get(1))).isEqualTo(Duration.ofSeconds(10));
        robot.type(KeyCode.F6);
        int rung = invented.rung.size();
        robot.interact(() -> stayWarm(Duration.ofMinutes(5)));
        assertThat(invented.rung).hasSize(rung);
    }

    @Test
    void theAnswersAreButtonsToo(FxRobot robot) {
        robot.interact(() -> invented.tooWarm(true));
        List<String> names = robot.lookup(".alarm-answers .button").queryAll().stream()
                .map(Node::getAccessibleText)
                .toList();
        assertThat(names).containsExactly("I have seen it", "Quiet for 15 min", "Quiet for 60 min");
        robot.interact(() -> ((javafx.scene.control.Button)
                        robot.lookup(".alarm-answers .button").nth(0).query())
                .fire());
        assertThat(banner(robot).isVisible()).isFalse();
    }

    @Test
    void aJournalThatCannotBeWrittenIsSaid(FxRobot robot) {
        robot.interact(() -> {
            invented.journal.fill(true);
            invented.tooWarm(false);
        });
        assertThat(((Labeled) robot.lookup(".alarm-headline").query()).getText())
                .isEqualTo("The alarm journal cannot be written");
        robot.interact(() -> invented.journal.fill(false));
        robot.interact(() -> stayWarm(Duration.ofSeconds(30)));
        robot.interact(() -> invented.journal.fill(true));
        robot.type(KeyCode.F6);
        assertThat(banner(robot).isVisible()).isTrue();
        assertThat(turns()).containsExactly(RAISED);
    }

    @Test
    void itIsPictured(FxRobot robot) {
        ScreenShots.of("alarm", look -> RoundPictures.under(new InventedWatch().tooWarm(false).model));
        ScreenShots.of("alarm-two", look -> RoundPictures.under(new InventedWatch().tooWarm(true).model));
    }

    private void stayWarm(Duration lasting) {
        for (long second = 0; second < lasting.toSeconds(); second += 10) {
            invented.read("P-1", 30.4);
            invented.read("P-2", 27);
            invented.pass(Duration.ofSeconds(10));
        }
    }

    private static Node banner(FxRobot robot) {
        return robot.lookup(".alarm-banner").query();
    }

    private List<AlarmEntry> journal() {
        return invented.journal.of("box 1");
    }

    private List<AlarmTurn> turns() {
        return journal().stream().map(AlarmEntry::turn).toList();
    }
}
