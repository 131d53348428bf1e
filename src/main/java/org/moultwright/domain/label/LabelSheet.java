package org.moultwright.domain.label;

import java.util.function.Supplier;
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
        fit(
                fits(labelWidthMillimetres, paper.widthMillimetres()),
                Measure.LABEL_WIDTH,
                () -> Texts.say(
                        "Labels {0} mm wide do not fit: they are at least {1} mm, and the page is {2} mm wide.",
                        plain(labelWidthMillimetres), plain(LEAST_MILLIMETRES), plain(paper.widthMillimetres())));
        fit(
                fits(labelHeightMillimetres, paper.heightMillimetres()),
                Measure.LABEL_HEIGHT,
                () -> Texts.say(
                        "Labels {0} mm high do not fit: they are at least {1} mm, and the page is {2} mm high.",
                        plain(labelHeightMillimetres), plain(LEAST_MILLIMETRES), plain(paper.heightMillimetres())));
        fit(
                shape == LabelShape.RECTANGLE || labelWidthMillimetres == labelHeightMillimetres,
                Measure.LABEL_HEIGHT,
                () -> Texts.say(
                        "Labels that are round are as high as wide: {0} is not {1} mm.",
                        plain(labelHeightMillimetres), plain(labelWidthMillimetres)));
        fit(
                isOn(topMillimetres, paper.heightMillimetres()),
                Measure.TOP,
                () -> Texts.say(
                        "Labels cannot begin {0} mm from the upper edge: the page is {1} mm high.",
                        plain(topMillimetres), plain(paper.heightMillimetres())));
        fit(
                isOn(leftMillimetres, paper.widthMillimetres()),
                Measure.LEFT,
                () -> Texts.say(
                        "Labels cannot begin {0} mm from the left edge: the page is {1} mm wide.",
                        plain(leftMillimetres), plain(paper.widthMillimetres())));
        fit(
                isApart(pitchXMillimetres, labelWidthMillimetres),
                Measure.PITCH_X,
                () -> Texts.say(
                        "Labels overlap sideways: a label measures {0} mm and the next begins after {1} mm.",
                        plain(labelWidthMillimetres), plain(pitchXMillimetres)));
        fit(
                isApart(pitchYMillimetres, labelHeightMillimetres),
                Measure.PITCH_Y,
                () -> Texts.say(
                        "Labels overlap downwards: a label measures {0} mm and the next begins after {1} mm.",
                        plain(labelHeightMillimetres), plain(pitchYMillimetres)));
        double right = leftMillimetres + (columns - 1) * pitchXMillimetres + labelWidthMillimetres;
        fit(
                right <= paper.widthMillimetres() + CUT_MILLIMETRES,
                Measure.COLUMNS,
                () -> Texts.say(
                        "Labels reach over the right edge: they end at {0} mm and the paper at {1} mm.",
                        Numbers.fixed(right, 1), plain(paper.widthMillimetres())));
        double bottom = topMillimetres + (rows - 1) * pitchYMillimetres + labelHeightMillimetres;
        fit(
                bottom <= paper.heightMillimetres() + CUT_MILLIMETRES,
                Measure.ROWS,
                () -> Texts.say(
                        "Labels reach over the lower edge: they end at {0} mm and the paper at {1} mm.",
                        Numbers.fixed(bottom, 1), plain(paper.heightMillimetres())));
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

    private static boolean fits(double labelMillimetres, double pageMillimetres) {
        return labelMillimetres >= LEAST_MILLIMETRES && labelMillimetres <= pageMillimetres + CUT_MILLIMETRES;
    }

    private static boolean isOn(double marginMillimetres, double pageMillimetres) {
        return marginMillimetres >= 0 && marginMillimetres <= pageMillimetres;
    }

    private static boolean isApart(double pitchMillimetres, double labelMillimetres) {
        return pitchMillimetres >= labelMillimetres - CUT_MILLIMETRES;
    }

    static String plain(double millimetres) {
        String text = Double.toString(millimetres);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** Sheets are made at every letter typed, so the sentence is put together only where it is said. */
    private static void fit(boolean fits, Measure measure, Supplier<String> sentence) {
        if (!fits) {
            throw new Misfit(measure, sentence.get());
        }
    }

    /** Labels that cannot lie on their paper, told to the keeper in a sentence. */
    public static final class Misfit extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        private final Measure measure;
        private final String sentence;

        Misfit(Measure measure, String sentence) {
            super(sentence);
            this.measure = measure;
            this.sentence = sentence;
        }

        /** The measure to look at first. */
        public Measure measure() {
            return measure;
        }

        public String sentence() {
            return sentence;
        }
    }

    /** What may not fit. */
    public enum Measure {
        COLUMNS,
        ROWS,
        LABEL_WIDTH,
        LABEL_HEIGHT,
        LEFT,
        TOP,
        PITCH_X,
        PITCH_Y
    }
}
