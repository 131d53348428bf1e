package org.moultwright.domain;

import org.moultwright.language.Texts;

/**
 * Why animals moved from one account to another, in the keeper's own words.
 *
 * <p>The constants are the causes the workbench itself writes or offers; a file may bring any other.
 */
public record Cause(String words) {
    public static final Cause OPENED = new Cause(Texts.kept("opened"));
    /** Opened, but weighed instead of counted. */
    public static final Cause ESTIMATED = new Cause(Texts.kept("opened, estimated by weight"));

    public static final Cause FUSED = new Cause(Texts.kept("fused"));
    public static final Cause INFERTILE = new Cause(Texts.kept("infertile"));
    public static final Cause FAILED_MOULT = new Cause(Texts.kept("failed moult"));
    public static final Cause DESICCATED = new Cause(Texts.kept("desiccated"));
    public static final Cause DROWNED = new Cause(Texts.kept("drowned"));
    public static final Cause MOULD = new Cause(Texts.kept("mould"));
    public static final Cause EATEN_OR_LOST = new Cause(Texts.kept("eaten or lost"));
    public static final Cause UNKNOWN = new Cause(Texts.kept("unknown"));
    public static final Cause EARLIER_MISCOUNT = new Cause(Texts.kept("earlier miscount"));
    public static final Cause POTTED = new Cause(Texts.kept("potted"));
    public static final Cause LOST_IN_POTTING = new Cause(Texts.kept("lost in potting"));
    public static final Cause DIED_IN_POT = new Cause(Texts.kept("died in its pot"));
    public static final Cause HANDED_OVER = new Cause(Texts.kept("handed over"));
    public static final Cause MOVED = new Cause(Texts.kept("moved"));
    public static final Cause ISOLATED = new Cause(Texts.kept("isolated"));

    public Cause {
        Require.text("words", words);
    }
}
