package org.moultwright.boot;

import javafx.beans.value.ObservableObjectValue;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.document.PdfSitterSheets;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.SaveDialog;
import org.moultwright.ui.forecast.ForecastDesk;
import org.moultwright.ui.forecast.ForecastScreen;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.takealong.SitterViewModel;
import org.moultwright.ui.takealong.TakeAlong;
import org.moultwright.ui.takealong.TakeAlongDesk;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.ScoreForecasts;

/**
 * Puts together the screen of forecasts, and what is taken along from it.
 *
 * @param plans what is planned, as the sitter sees it too
 */
record ForecastParts(DeskTools tools, PlanChoices plans, SitterViewModel sitter) {
    Screen screen(ObservableObjectValue<Palette> palette) {
        Forecasting forecasting = tools.opened().forecasting().get();
        ScoreForecasts scores = new ScoreForecasts(
                tools.book(), tools.store().readings(), tools.store().forecasts(), forecasting.forecaster()::forecast);
        TakeAlong takeAlong = new TakeAlong(takeAlongDesk(), sitter);
        return takeAlong.over(ForecastScreen.of(
                new ForecastDesk(
                        tools.shown().room(),
                        forecasting.prepared()::of,
                        tools.runners().whatIf(),
                        scores::byEvent,
                        tools.days(),
                        tools.words(),
                        plans),
                palette,
                takeAlong.button()));
    }

    private TakeAlongDesk takeAlongDesk() {
        return new TakeAlongDesk(
                tools.shown().room(),
                plans,
                new IcsCalendarFiles(),
                new SaveDialog(
                        tools.window(),
                        DeskTools.HOME,
                        new SaveDialog.Kind(Texts.say("Save the calendar"), Texts.say("Calendar"), ".ics")),
                new PdfSitterSheets(),
                tools.savesPdf(Texts.say("Save the sitter's sheet")),
                tools.runners().keeper(),
                tools.clock(),
                tools.days(),
                tools.words());
    }
}
