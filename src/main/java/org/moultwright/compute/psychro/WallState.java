package org.moultwright.compute.psychro;

/** Whether water settles on a wall. */
public enum WallState {
    DRY,
    MAY_WET,
    WILL_WET;

    /** How far above the dew point a wall may still wet, beyond its uncertainty. */
    static final double MARGIN_CELSIUS = 0.5;
}
