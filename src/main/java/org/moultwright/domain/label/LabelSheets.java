package org.moultwright.domain.label;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sheets the workbench knows from the start.
 *
 * <p>The 63.5 × 38.1 mm sheet is published; the others are from memory with their sums checked against the
 * paper. In all sheets of rectangles the rows touch. The sizes of rolls are common practice, no source; any other is
 * laid by its dimensions.
 */
public final class LabelSheets {
    public static final LabelSheet A4_3X8 = touching(Paper.A4, 3, 8, 70, 37, 0.5, 0, 70);

    private static final List<LabelSheet> ALL = List.of(
            A4_3X8,
            touching(Paper.A4, 3, 7, 63.5, 38.1, 15.15, 7.2, 66),
            touching(Paper.A4, 4, 12, 45.7, 21.2, 21.3, 9.85, 48.2),
            touching(Paper.A4, 5, 13, 38.1, 21.2, 10.7, 4.75, 40.6),
            touching(Paper.A4, 7, 27, 25.4, 10, 13.5, 8.6, 27.9),
            touching(Paper.LETTER, 3, 10, 66.675, 25.4, 12.7, 4.76, 69.85));

    /** For the lids of round pots. */
    private static final List<LabelSheet> ROUND = List.of(
            round(4, 6, 40, 13.5, 14.5, 47, 46),
            round(6, 9, 25, 13.5, 12.5, 32, 30.625),
            round(9, 13, 18, 13.5, 8, 22, 21));

    /** One label after another through the system's printer. */
    private static final List<LabelSheet> ROLLS = List.of(
            LabelSheet.ofRoll(57, 32), LabelSheet.ofRoll(50, 25), LabelSheet.ofRoll(40, 30), LabelSheet.ofRoll(30, 20));

    private LabelSheets() {}

    /** Sheets of rectangles, the largest labels of each paper first. */
    public static List<LabelSheet> all() {
        return ALL;
    }

    /** Sheets of rectangles, sheets of round labels, rolls. */
    public static List<LabelSheet> everything() {
        return Stream.of(ALL, ROUND, ROLLS).flatMap(List::stream).toList();
    }

    public static Optional<LabelSheet> find(String code) {
        return everything().stream().filter(sheet -> sheet.code().equals(code)).findFirst();
    }

    private static LabelSheet round(
            int columns,
            int rows,
            double acrossMillimetres,
            double topMillimetres,
            double leftMillimetres,
            double pitchXMillimetres,
            double pitchYMillimetres) {
        return new LabelSheet(
                Paper.A4.page(),
                columns,
                rows,
                acrossMillimetres,
                acrossMillimetres,
                topMillimetres,
                leftMillimetres,
                pitchXMillimetres,
                pitchYMillimetres,
                LabelShape.ROUND);
    }

    private static LabelSheet touching(
            Paper paper,
            int columns,
            int rows,
            double labelWidthMillimetres,
            double labelHeightMillimetres,
            double topMillimetres,
            double leftMillimetres,
            double pitchXMillimetres) {
        return new LabelSheet(
                paper.page(),
                columns,
                rows,
                labelWidthMillimetres,
                labelHeightMillimetres,
                topMillimetres,
                leftMillimetres,
                pitchXMillimetres,
                labelHeightMillimetres);
    }
}
