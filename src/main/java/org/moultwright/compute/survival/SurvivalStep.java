package org.moultwright.compute.survival;

/**
 * The survival right after a time at which events fell.
 *
 * @param time the time
 * @param atRisk animals watched right before it
 * @param events events at it
 * @param survival share surviving it
 * @param standardError Greenwood's standard error of that share; NaN once nobody survives
 */
public record SurvivalStep(double time, int atRisk, int events, double survival, double standardError) {}
