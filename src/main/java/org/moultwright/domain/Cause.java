package org.moultwright.domain;

/**
 * Why animals moved from one account to another, in the keeper's own words.
 *
 * <p>The constants are the causes the workbench itself writes or offers; a file may bring any other.
 */
public record Cause(String words) {
    public static final Cause OPENED = new Cause("opened");
    /** Opened, but weighed instead of counted. */
    public static final Cause ESTIMATED = new Cause("opened, estimated by weight");

    public static final Cause FUSED = new Cause("fused");
    public static final Cause INFERTILE = new Cause("infertile");
    public static final Cause FAILED_MOULT = new Cause("failed moult");
    public static final Cause DESICCATED = new Cause("desiccated");
    public static final Cause DROWNED = new Cause("drowned");
    public static final Cause MOULD = new Cause("mould");
    public static final Cause EATEN_OR_LOST = new Cause("eaten or lost");
    public static final Cause UNKNOWN = new Cause("unknown");
    public static final Cause EARLIER_MISCOUNT = new Cause("earlier miscount");
    public static final Cause POTTED = new Cause("potted");
    public static final Cause LOST_IN_POTTING = new Cause("lost in potting");
    public static final Cause DIED_IN_POT = new Cause("died in its pot");
    public static final Cause HANDED_OVER = new Cause("handed over");
    public static final Cause MOVED = new Cause("moved");
    public static final Cause ISOLATED = new Cause("isolated");

    public Cause {
        Require.text("words", words);
    }
}
