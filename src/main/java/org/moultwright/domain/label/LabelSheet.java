package org.moultwright.domain.label;

import org.moultwright.domain.Require;

/**
 * A sheet of labels, known by its dimensions alone. Lengths are in mm.
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
 */
public record LabelSheet(
        Paper paper,
        int columns,
        int rows,
        double labelWidthMillimetres,
        double labelHeightMillimetres,
        double topMillimetres,
        double leftMillimetres,
        double pitchXMillimetres,
        double pitchYMillimetres) {

    /** Sheets are cut no finer than this. */
    private static final double CUT_MILLIMETRES = 0.05;

    public LabelSheet {
        Require.atLeast("columns", columns, 1);
        Require.atLeast("rows", rows, 1);
        Require.within("labelWidthMillimetres", labelWidthMillimetres, 5, paper.widthMillimetres());
        Require.within("labelHeightMillimetres", labelHeightMillimetres, 5, paper.heightMillimetres());
        Require.within("topMillimetres", topMillimetres, 0, paper.heightMillimetres());
        Require.within("leftMillimetres", leftMillimetres, 0, paper.widthMillimetres());
        requireApart("Labels overlap sideways", pitchXMillimetres, labelWidthMillimetres);
        requireApart("Labels overlap downwards", pitchYMillimetres, labelHeightMillimetres);
        requireOnPaper(
                "right",
                leftMillimetres + (columns - 1) * pitchXMillimetres + labelWidthMillimetres,
                paper.widthMillimetres());
        requireOnPaper(
                "lower",
                topMillimetres + (rows - 1) * pitchYMillimetres + labelHeightMillimetres,
                paper.heightMillimetres());
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

    /** "A4, 3 × 8, 70 × 37 mm": paper, columns by rows, one label's width by height. */
    public String title() {
        return "%s, %d × %d, %s × %s mm"
                .formatted(paper.title(), columns, rows, plain(labelWidthMillimetres), plain(labelHeightMillimetres));
    }

    /** The same for a command line: "a4-3x8-70x37". */
    public String code() {
        return "%s-%dx%d-%sx%s"
                .formatted(paper.key(), columns, rows, plain(labelWidthMillimetres), plain(labelHeightMillimetres));
    }

    private static void requireApart(String overlap, double pitchMillimetres, double labelMillimetres) {
        Require.that(
                pitchMillimetres >= labelMillimetres - CUT_MILLIMETRES,
                "%s: a label measures %s mm and the next begins after %s mm."
                        .formatted(overlap, plain(labelMillimetres), plain(pitchMillimetres)));
    }

    private static void requireOnPaper(String edge, double reachMillimetres, double paperMillimetres) {
        Require.that(
                reachMillimetres <= paperMillimetres + CUT_MILLIMETRES,
                "Labels reach over the %s edge: they end at %.1f mm and the paper at %s mm."
                        .formatted(edge, reachMillimetres, plain(paperMillimetres)));
    }

    private static String plain(double millimetres) {
        String text = Double.toString(millimetres);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
