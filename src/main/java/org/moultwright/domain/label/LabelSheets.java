package org.moultwright.domain.label;

import java.util.List;
import java.util.Optional;

/**
 * The sheets the workbench knows from the start.
 *
 * <p>The 63.5 × 38.1 mm sheet is published; the others are from memory with their sums checked against the
 * paper. In all of them the rows touch.
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

    private LabelSheets() {}

    /** All of them, the largest labels of each paper first. */
    public static List<LabelSheet> all() {
        return ALL;
    }

    public static Optional<LabelSheet> find(String code) {
        return ALL.stream().filter(sheet -> sheet.code().equals(code)).findFirst();
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
                paper,
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
