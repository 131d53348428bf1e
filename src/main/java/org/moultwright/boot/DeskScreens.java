package org.moultwright.boot;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.broods.BroodsScreen;
import org.moultwright.ui.climate.ClimateScreen;
import org.moultwright.ui.forecast.ForecastScreen;
import org.moultwright.ui.intake.Intake;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.potting.PottingScreen;
import org.moultwright.ui.register.RegisterScreen;
import org.moultwright.ui.round.RoundScreen;
import org.moultwright.ui.shelf.ShelfDesk;
import org.moultwright.ui.shelf.ShelfScreen;
import org.moultwright.ui.shell.LaterScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.shell.WhenRead;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.RoomReading;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.WatchView;

/**
 * The screens of the rail. The round is made at once; each other when it is first asked for.
 *
 * @param heard what the probes on wires say now
 * @param demoDoor leads to the demo room; empty where this is it
 * @param writeIn readings written in over the climate
 */
record DeskScreens(
        DeskTools tools,
        Supplier<List<WatchView.Place>> heard,
        PhotoDesk photos,
        Optional<DemoDoor> demoDoor,
        Intake writeIn,
        ClimateScreen climate) {
    /** All of them, in the rail's order. */
    List<Screen> inOrder(RoundParts round, ForecastParts forecasts, ObservableObjectValue<Palette> palette) {
        BroodsParts broods = new BroodsParts(tools, photos, demoDoor);
        PotParts pots = new PotParts(tools);
        return List.of(
                new RoundScreen(round.round(photos)),
                whenRead(BroodsScreen.NAME, () -> BroodsScreen.of(broods.desk(), palette)),
                whenRead(ShelfScreen.NAME, () -> ShelfScreen.of(shelf(pots.labels()))),
                whenRead(ClimateScreen.NAME, () -> writeIn.over(climate.screen())),
                whenRead(ForecastScreen.NAME, () -> forecasts.screen(palette)),
                new LaterScreen(PottingScreen.NAME, () -> new PottingScreen(pots.potting())),
                new LaterScreen(RegisterScreen.NAME, () -> RegisterScreen.of(pots.register())));
    }

    private Screen whenRead(ScreenName name, Supplier<Screen> maker) {
        return new WhenRead(new LaterScreen(name, maker), isAwaited());
    }

    /** Whether something is written of a room that is not read yet. */
    private BooleanBinding isAwaited() {
        boolean isWritten = !tools.opened().written().broods().isEmpty();
        return Bindings.createBooleanBinding(
                () -> isWritten && tools.shown().room().get().equals(RoomView.EMPTY),
                tools.shown().room());
    }

    /** What screens would otherwise work out of a room while the keeper waits for them. */
    static List<RoomReading<?>> readings(Vocabulary vocabulary, DayWords days) {
        return List.of(
                BroodsScreen.reading(vocabulary, days),
                ShelfAt.NOW,
                ForecastScreen.reading(vocabulary, days),
                RegisterScreen.READING);
    }

    private ShelfDesk shelf(LabelDesk labels) {
        return new ShelfDesk(
                tools.shown().room(),
                heard,
                tools.shown().readAgain(),
                new ArrangeShelf(tools.book(), tools.clock(), tools.ids()),
                new ShareTrays(tools.book(), tools.clock(), tools.ids()),
                tools.undo(),
                labels,
                tools.runners().keeper(),
                tools.shell(),
                tools.clock(),
                tools.days(),
                tools.words());
    }
}
