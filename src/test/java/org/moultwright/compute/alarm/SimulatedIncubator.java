package org.moultwright.compute.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * An invented incubator with a probe in it, read every ten seconds.
 *
 * <p>A heavy inside that a thermostat with hysteresis heats and a room with a daily swing cools; light air that
 * follows it, and the room while the door stands open; a probe that lags, has noise, an offset and a last digit.
 * Deliberately not what the alarms assume: the swing is not theirs, ripple hangs together in time.
 */
public final class SimulatedIncubator {
    public static final int STEP_SECONDS = 10;
    public static final double SET_POINT_CELSIUS = 27;
    public static final Duration PERIOD = Duration.ofSeconds(STEP_SECONDS);

    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");
    private static final int STEPS_A_DAY = 86_400 / STEP_SECONDS;
    private static final double STEP_MINUTES = STEP_SECONDS / 60.0;
    private static final double LAST_DIGIT = 0.0625;

    /** What goes wrong. */
    public enum Fault {
        NONE,
        HEATER_STUCK_ON,
        HEATER_DEAD,
        DOOR_LEFT_OPEN,
        /** The probe falls out of the box into the room's air. */
        PROBE_FALLEN,
        /** Readings thin out over half an hour and end; the fault begins with their end. */
        BATTERY_FLAT,
        /** The probe goes on saying its last value. */
        PROBE_STUCK,
        /** The thermostat comes to hold the inside 0.8 K warmer, over a day. */
        THERMOSTAT_DRIFTS,
        /** The vents are shut over a soaked liner: the air grows moist until its water settles on the wall. */
        VENTS_SHUT
    }

    private final SplittableRandom random;
    private final Fault fault;
    private final int faultStep;

    private final double roomMeanCelsius;
    private final double roomSwingCelsius;
    private final double roomPeakDay;
    private final double wallMinutes;
    private final double heaterCelsiusPerMinute;
    private final double hysteresisCelsius;
    private final double thermostatOffCelsius;
    private final double probeOffCelsius;
    private final double probeLagMinutes;
    private final double noiseCelsius;
    private final double swingInsideCelsius;
    private final List<int[]> doorSteps = new ArrayList<>();
    private final Set<Integer> lostSteps = new HashSet<>();

    private final SimulatedMoisture moisture;

    private double insideCelsius;
    private double airCelsius;
    private double probeCelsius;
    private double slowNoiseCelsius;
    private double saidCelsius = Double.NaN;
    private double saidPercent = Double.NaN;
    private boolean isHeating;
    private int step;

    /**
     * @param fault what goes wrong, at {@code faultDay}
     * @param days how long the simulation lasts
     */
    public SimulatedIncubator(long seed, Fault fault, double faultDay, int days) {
        this.random = new SplittableRandom(seed);
        this.fault = fault;
        this.faultStep = fault == Fault.NONE ? Integer.MAX_VALUE : (int) (faultDay * STEPS_A_DAY);
        this.roomMeanCelsius = between(18, 22);
        this.roomSwingCelsius = between(0.5, 2);
        this.roomPeakDay = between(0.5, 0.8);
        this.wallMinutes = between(60, 150);
        this.heaterCelsiusPerMinute = between(14, 20) / wallMinutes;
        this.hysteresisCelsius = between(0.1, 0.4);
        this.thermostatOffCelsius = 0.4 * random.nextGaussian();
        this.probeOffCelsius = 0.15 * random.nextGaussian();
        this.probeLagMinutes = between(0.5, 2);
        this.noiseCelsius = between(0.01, 0.05);
        this.swingInsideCelsius = between(0, 0.25);
        this.insideCelsius = SET_POINT_CELSIUS + thermostatOffCelsius;
        this.airCelsius = insideCelsius;
        this.probeCelsius = insideCelsius;
        this.moisture = new SimulatedMoisture(seed);
        openDoors(days);
        loseReadings(days);
    }

    /** What the watch sees of the next ten seconds. */
    public Observation next() {
        double room = roomCelsius();
        heat(room);
        breathe(room);
        slowNoiseCelsius += -slowNoiseCelsius * STEP_MINUTES / 60 + 0.008 * random.nextGaussian();
        double around = isFallen() ? room : airCelsius;
        moisture.pass(
                STEP_MINUTES, airCelsius, room, isOpen() ? 10 : 1, fault == Fault.VENTS_SHUT && step >= faultStep);
        probeCelsius += (around - probeCelsius) * Math.min(1, STEP_MINUTES / probeLagMinutes);
        if (!(fault == Fault.PROBE_STUCK && step >= faultStep)) {
            double indicated = probeCelsius + probeOffCelsius + slowNoiseCelsius + noiseCelsius * random.nextGaussian();
            saidCelsius = Math.round(indicated / LAST_DIGIT) * LAST_DIGIT;
            saidPercent = isFallen() ? SimulatedMoisture.ROOM_PERCENT : moisture.saidPercent(airCelsius);
        }
        boolean isLost = lostSteps.contains(step) || isBatteryGone();
        step++;
        Instant at = START.plusSeconds((long) step * STEP_SECONDS);
        Observation.Sample sample = new Observation.Sample(
                saidCelsius,
                saidCelsius - probeOffCelsius,
                saidPercent,
                SET_POINT_CELSIUS,
                Optional.of(moisture.risk(saidCelsius - probeOffCelsius, saidPercent, airCelsius, room)));
        return new Observation(at, STEP_SECONDS * 1000L, isLost ? Optional.empty() : Optional.of(sample));
    }

    private double roomCelsius() {
        double day = (double) step / STEPS_A_DAY;
        return roomMeanCelsius + roomSwingCelsius * Math.cos(2 * Math.PI * (day - roomPeakDay));
    }

    private void heat(double room) {
        double set = SET_POINT_CELSIUS + thermostatOffCelsius + swingNow() + driftNow();
        if (insideCelsius < set - hysteresisCelsius / 2) {
            isHeating = true;
        } else if (insideCelsius > set + hysteresisCelsius / 2) {
            isHeating = false;
        }
        boolean isOn = step < faultStep
                ? isHeating
                : fault == Fault.HEATER_STUCK_ON || (isHeating && fault != Fault.HEATER_DEAD);
        double lossPerMinute = (insideCelsius - room) / wallMinutes;
        insideCelsius += STEP_MINUTES * ((isOn ? heaterCelsiusPerMinute : 0) - lossPerMinute);
    }

    private void breathe(double room) {
        boolean isOpen = isOpen();
        double target = isOpen ? 0.85 * room + 0.15 * insideCelsius : insideCelsius;
        double minutes = isOpen ? 3 : 4;
        airCelsius += (target - airCelsius) * STEP_MINUTES / minutes;
        if (isOpen) {
            insideCelsius += (room - insideCelsius) * STEP_MINUTES / 90;
        }
    }

    private boolean isFallen() {
        return fault == Fault.PROBE_FALLEN && step >= faultStep;
    }

    private boolean isOpen() {
        return isDoorOpen() || (fault == Fault.DOOR_LEFT_OPEN && step >= faultStep);
    }

    private double swingNow() {
        return swingInsideCelsius * Math.cos(2 * Math.PI * ((double) step / STEPS_A_DAY - roomPeakDay));
    }

    private double driftNow() {
        if (fault != Fault.THERMOSTAT_DRIFTS || step < faultStep) {
            return 0;
        }
        return 0.8 * Math.min(1, (step - faultStep) / (double) STEPS_A_DAY);
    }

    private boolean isDoorOpen() {
        return doorSteps.stream().anyMatch(door -> step >= door[0] && step < door[1]);
    }

    private boolean isBatteryGone() {
        if (fault != Fault.BATTERY_FLAT) {
            return false;
        }
        double minutesLeft = (faultStep - step) * STEP_MINUTES;
        return minutesLeft <= 0 || random.nextDouble() > minutesLeft / 30;
    }

    /** Two to five looks a day into the box, each up to two minutes. */
    private void openDoors(int days) {
        for (int day = 0; day < days; day++) {
            for (int i = random.nextInt(2, 6); i > 0; i--) {
                int open = day * STEPS_A_DAY + random.nextInt(STEPS_A_DAY);
                doorSteps.add(new int[] {open, open + random.nextInt(2, 13)});
            }
        }
    }

    /** Two short gaps and now and then a single reading lost. */
    private void loseReadings(int days) {
        for (int i = 0; i < 2; i++) {
            int from = random.nextInt(days * STEPS_A_DAY);
            for (int j = random.nextInt(2, 5); j > 0; j--) {
                lostSteps.add(from + j);
            }
        }
        for (int i = 0; i < 20 * days; i++) {
            lostSteps.add(random.nextInt(days * STEPS_A_DAY));
        }
    }

    private double between(double lowest, double highest) {
        return random.nextDouble(lowest, highest);
    }
}
