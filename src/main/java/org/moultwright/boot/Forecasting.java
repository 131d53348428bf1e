package org.moultwright.boot;

import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.workflow.PreparedForecasts;

/** What makes a desk's forecasts, and what is assumed of species for them. */
record Forecasting(TimingsFile own, TimingsFile.Loaded assumed, Forecaster forecaster, PreparedForecasts prepared) {
    /** Reads what is assumed, the keeper's own file first. */
    static Forecasting of(TimingsFile own) {
        TimingsFile.Loaded assumed = own.load();
        Forecaster forecaster = new Forecaster(assumed.timings());
        return new Forecasting(own, assumed, forecaster, new PreparedForecasts(forecaster));
    }
}
