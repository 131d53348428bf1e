package org.moultwright.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.moultwright.domain.Stage;
import org.moultwright.ui.theme.Token;

/** The bands of a ribbon from the floor up: potted, then the stages from the last to the first, then the lost. */
final class RibbonBands {
    /** One band: its colour and how many animals it holds at a point. */
    record Band(Token token, ToDoubleFunction<Ribbon.Point> animals) {}

    static final List<Band> FROM_THE_FLOOR = fromTheFloor();

    private RibbonBands() {}

    private static List<Band> fromTheFloor() {
        List<Band> bands = new ArrayList<>();
        bands.add(new Band(Token.POTTED, Ribbon.Point::potted));
        Stage[] stages = Stage.values();
        for (int i = stages.length - 1; i >= 0; i--) {
            Stage stage = stages[i];
            bands.add(new Band(Token.of(stage), point -> point.living().getOrDefault(stage, 0.0)));
        }
        bands.add(new Band(Token.DEAD, Ribbon.Point::lost));
        return List.copyOf(bands);
    }
}
