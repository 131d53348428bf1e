package org.moultwright.domain.label;

import org.moultwright.domain.Require;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/**
 * A sheet of labels, or one label of a roll, known by its dimensions alone. Lengths are in mm.
 *
 * <p>Promises that all labels lie on the paper and no two overlap. Cells are numbered from 1 along the rows,
 * as one reads.
 *
 * @param columns labels side by side, at least 1
 * @param rows labels one below the other, at least 1
 * @param labelWidthMillimetres width of one label
 * @param labelHeightMillimetres height of one label
 * @param topMillimetres from the paper's upper edge to the first row
 * @param leftMillimetres from the paper's left edge to the first column
 * @param pitchXMillimetres from one column's left edge to the next one's
 * @param pitchYMillimetres from one row's upper edge to the next one's
 * @param shape the outline of each label; a round one is as high as wide
 */
public record LabelSheet(
        PageSize paper,
        int columns,
        int rows,
        double labelWidthMillimetres,
        double labelHeightMillimetres,
        double topMillimetres,
        double leftMillimetres,
        double pitchXMillimetres,
        double pitchYMillimetres,
        LabelShape shape) {

    /** Sheets are cut no finer than this. */
    private static final double CUT_MILLIMETRES = 0.05;

    private static final double LEAST_MILLIMETRES = 5;

    public LabelSheet {
        Require.atLeast("columns", columns, 1);
        Require.atLeast("rows", rows, 1);
        requireFits(Texts.say("wide"), labelWidthMillimetres, paper.widthMillimetres());
        requireFits(Texts.say("high"), labelHeightMillimetres, paper.heightMillimetres());
        fit(
                shape == LabelShape.RECTANGLE || labelWidthMillimetres == labelHeightMillimetres,
                Texts.say(
                        "Labels that are round are as high as wide: {0} is not {1} mm.",
                        plain(labelHeightMillimetres), plain(labelWidthMillimetres)));
        Require.within("topMillimetres", topMillimetres, 0, paper.heightMillimetres());
        Require.within("leftMillimetres", leftMillimetres, 0, paper.widthMillimetres());
        requireApart(Texts.say("Labels overlap sideways"), pitchXMillimetres, labelWidthMillimetres);
        requireApart(Texts.say("Labels overlap downwards"), pitchYMillimetres, labelHeightMillimetres);
        requireOnPaper(
                Texts.say("right"),
                leftMillimetres + (columns - 1) * pitchXMillimetres + labelWidthMillimetres,
                paper.widthMillimetres());
        requireOnPaper(
                Texts.say("lower"),
                topMillimetres + (rows - 1) * pitchYMillimetres + labelHeightMillimetres,
                paper.heightMillimetres());
    }

    /** A sheet of rectangles. */
    public LabelSheet(
            PageSize paper,
            int columns,
            int rows,
            double labelWidthMillimetres,
            double labelHeightMillimetres,
            double topMillimetres,
            double leftMillimetres,
            double pitchXMillimetres,
            double pitchYMillimetres) {
        this(
                paper,
                columns,
                rows,
                labelWidthMillimetres,
                labelHeightMillimetres,
                topMillimetres,
                leftMillimetres,
                pitchXMillimetres,
                pitchYMillimetres,
                LabelShape.RECTANGLE);
    }

    /** One label of a roll, as large as its page. */
    public static LabelSheet ofRoll(double widthMillimetres, double heightMillimetres) {
        return new LabelSheet(
                PageSize.of(widthMillimetres, heightMillimetres),
                1,
                1,
                widthMillimetres,
                heightMillimetres,
                0,
                0,
                widthMillimetres,
                heightMillimetres);
    }

    /** How many labels one sheet holds. */
    public int cells() {
        return columns * rows;
    }

    /** Where a cell's label lies. */
    public Box cell(int cell) {
        Require.within("cell", cell, 1, cells());
        int column = (cell - 1) % columns;
        int row = (cell - 1) / columns;
        return new Box(
                leftMillimetres + column * pitchXMillimetres,
                topMillimetres + row * pitchYMillimetres,
                labelWidthMillimetres,
                labelHeightMillimetres);
    }

    /** How many sheets a number of labels takes if the first goes into {@code firstCell} of the first sheet. */
    public int sheetsNeeded(int labels, int firstCell) {
        Require.within("firstCell", firstCell, 1, cells());
        return labels == 0 ? 0 : (firstCell - 1 + labels + cells() - 1) / cells();
    }

    /** "A4, 3 × 8, 70 × 37 mm": paper, columns by rows, one label's width by height; "roll, 57 × 32 mm". */
    public String title() {
        if (isRoll()) {
            return Texts.say("roll, {0}", paper.title());
        }
        if (shape == LabelShape.ROUND) {
            return Texts.say(
                    "{0}, {1} × {2}, round, {3} mm", paper.title(), columns, rows, plain(labelWidthMillimetres));
        }
        return "%s, %d × %d, %s × %s mm"
                .formatted(paper.title(), columns, rows, plain(labelWidthMillimetres), plain(labelHeightMillimetres));
    }

    /** The same for a command line: "a4-3x8-70x37". */
    public String code() {
        if (isRoll()) {
            return "roll-" + paper.key();
        }
        if (shape == LabelShape.ROUND) {
            return paper.key() + "-" + columns + "x" + rows + "-round" + plain(labelWidthMillimetres);
        }
        return paper.key() + "-" + columns + "x" + rows + "-" + plain(labelWidthMillimetres) + "x"
                + plain(labelHeightMillimetres);
    }

    private boolean isRoll() {
        return shape == LabelShape.RECTANGLE && equals(ofRollOf(paper));
    }

    private static LabelSheet ofRollOf(PageSize page) {
        return ofRoll(page.widthMillimetres(), page.heightMillimetres());
    }

    private static void requireFits(String way, double labelMillimetres, double pageMillimetres) {
        fit(
                labelMillimetres >= LEAST_MILLIMETRES && labelMillimetres <= pageMillimetres + CUT_MILLIMETRES,
                Texts.say(
                        "Labels {0} mm {1} do not fit: they are at least {2} mm, and the page is {3} mm {1}.",
                        plain(labelMillimetres), way, plain(LEAST_MILLIMETRES), plain(pageMillimetres)));
    }

    private static void requireApart(String overlap, double pitchMillimetres, double labelMillimetres) {
        fit(
                pitchMillimetres >= labelMillimetres - CUT_MILLIMETRES,
                Texts.say(
                        "{0}: a label measures {1} mm and the next begins after {2} mm.",
                        overlap, plain(labelMillimetres), plain(pitchMillimetres)));
    }

    private static void requireOnPaper(String edge, double reachMillimetres, double paperMillimetres) {
        fit(
                reachMillimetres <= paperMillimetres + CUT_MILLIMETRES,
                Texts.say(
                        "Labels reach over the {0} edge: they end at {1} mm and the paper at {2} mm.",
                        edge, Numbers.fixed(reachMillimetres, 1), plain(paperMillimetres)));
    }

    static String plain(double millimetres) {
        String text = Double.toString(millimetres);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private static void fit(boolean fits, String sentence) {
        if (!fits) {
            throw new Misfit(sentence);
        }
    }

    /** Labels that cannot lie on their paper, told to the keeper in a sentence. */
    public static final class Misfit extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        private final String sentence;

        Misfit(String sentence) {
            super(sentence);
            this.sentence = sentence;
        }

        public String sentence() {
            return sentence;
        }
    }
}
