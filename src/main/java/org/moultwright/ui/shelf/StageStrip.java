package org.moultwright.ui.shelf;

import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import javafx.scene.layout.Region;
import org.moultwright.domain.Stage;
import org.moultwright.ui.theme.Token;

/** The animals of a card by stage as one bar: a single node, for there may be hundreds. */
final class StageStrip extends Region {
    StageStrip() {
        getStyleClass().add("stage-strip");
    }

    void show(Map<Stage, Integer> byStage) {
        int total = byStage.values().stream().mapToInt(Integer::intValue).sum();
        setStyle(total > 0 ? "-fx-background-color: " + gradient(byStage, total) + ";" : "");
    }

    /** The furthest stage leads, as in the ribbon's floor. */
    private static String gradient(Map<Stage, Integer> byStage, int total) {
        StringJoiner stops = new StringJoiner(", ", "linear-gradient(to right, ", ")");
        int before = 0;
        for (int i = Stage.values().length - 1; i >= 0; i--) {
            Stage stage = Stage.values()[i];
            int count = byStage.getOrDefault(stage, 0);
            if (count > 0) {
                String colour = Token.of(stage).cssName();
                stops.add(stop(colour, before, total)).add(stop(colour, before + count, total));
                before += count;
            }
        }
        return stops.toString();
    }

    private static String stop(String colour, int animals, int total) {
        return colour + " " + String.format(Locale.ROOT, "%.2f%%", 100.0 * animals / total);
    }
}
