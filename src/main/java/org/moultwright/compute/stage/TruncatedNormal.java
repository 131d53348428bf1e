package org.moultwright.compute.stage;

/**
 * Mean and variance of a standard normal quantity known to lie between two bounds.
 *
 * @param mean its mean
 * @param variance its variance, at least 0
 */
record TruncatedNormal(double mean, double variance) {
    /** Where hardly anything of the distribution lies between the bounds they are taken at their word. */
    private static final double NO_ROOM = 1e-9;

    private static final double FARTHEST = 6;

    /**
     * A bound with what many uses of it need.
     *
     * @param z where it is; may be infinite
     * @param survival the probability above it
     * @param density of the distribution at it
     */
    record Bound(double z, double survival, double density) {
        /** No upper bound. */
        static final Bound NONE = new Bound(Double.POSITIVE_INFINITY, 0, 0);

        static Bound at(double z) {
            return new Bound(z, QuickTail.survival(z), QuickTail.density(z));
        }

        private double moment() {
            return density > 0 ? z * density : 0;
        }
    }

    /** Between two bounds, the first below the second. */
    static TruncatedNormal between(Bound from, Bound to) {
        double inside = from.survival() - to.survival();
        if (inside < NO_ROOM) {
            return new TruncatedNormal((Math.max(-FARTHEST, from.z()) + Math.min(FARTHEST, to.z())) / 2, 0);
        }
        double mean = (from.density() - to.density()) / inside;
        double second = 1 + (from.moment() - to.moment()) / inside;
        return new TruncatedNormal(mean, Math.max(0, second - mean * mean));
    }
}
