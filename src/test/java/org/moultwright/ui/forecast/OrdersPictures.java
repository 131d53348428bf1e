package org.moultwright.ui.forecast;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.PreparedRoom;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.RoomView;

/** The forecast with what to order beneath the lanes. */
public final class OrdersPictures {
    private OrdersPictures() {}

    public static Parent demo() {
        return of(RoomFixture.room(), new Appearance());
    }

    static ForecastView of(RoomView room, Appearance look) {
        ForecastViewModel model = model(new SimpleObjectProperty<>(room));
        model.partProperty().set(ForecastViewModel.Part.ORDERS);
        return new ForecastView(model, look.paletteProperty());
    }

    static ForecastViewModel model(ObjectProperty<RoomView> room) {
        return new ForecastViewModel(new ForecastDesk(
                room,
                new PreparedRoom().prepared()::of,
                new InlineRunner(),
                List::of,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                ChosenPlans.usual()));
    }
}
