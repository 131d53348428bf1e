package org.moultwright.domain.label;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.domain.Require;

/**
 * A stack of sheets as it lies by the printer.
 *
 * @param firstCell the first free cell of the sheet on top, from 1
 * @param shift how far the printer is off
 */
public record LabelStack(LabelSheet sheet, int firstCell, PrintShift shift) {
    public static final LabelStack NEW = new LabelStack(LabelSheets.A4_3X8, 1, PrintShift.NONE);

    private static final int NUMBERS = 13;

    public LabelStack {
        Require.within("firstCell", firstCell, 1, sheet.cells());
    }

    /** As it is written in settings: page, columns and rows, label, margins, pitches, first free cell, shift, shape. */
    public String written() {
        return Stream.of(
                        sheet.paper().widthMillimetres(),
                        sheet.paper().heightMillimetres(),
                        (double) sheet.columns(),
                        (double) sheet.rows(),
                        sheet.labelWidthMillimetres(),
                        sheet.labelHeightMillimetres(),
                        sheet.topMillimetres(),
                        sheet.leftMillimetres(),
                        sheet.pitchXMillimetres(),
                        sheet.pitchYMillimetres(),
                        (double) firstCell,
                        shift.rightMillimetres(),
                        shift.downMillimetres())
                .map(LabelSheet::plain)
                .collect(Collectors.joining(" ", "", sheet.shape() == LabelShape.ROUND ? " round" : ""));
    }

    /** What was written; empty if it makes no stack. */
    public static Optional<LabelStack> read(String written) {
        String[] words = written.strip().split(" +");
        boolean isRound = words.length == NUMBERS + 1 && words[NUMBERS].equals("round");
        if (!isRound && words.length != NUMBERS) {
            return Optional.empty();
        }
        try {
            double[] numbers = Stream.of(words)
                    .limit(NUMBERS)
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            return Optional.of(of(numbers, isRound ? LabelShape.ROUND : LabelShape.RECTANGLE));
        } catch (IllegalArgumentException noStack) {
            return Optional.empty();
        }
    }

    private static LabelStack of(double[] numbers, LabelShape shape) {
        LabelSheet sheet = new LabelSheet(
                PageSize.of(numbers[0], numbers[1]),
                (int) numbers[2],
                (int) numbers[3],
                numbers[4],
                numbers[5],
                numbers[6],
                numbers[7],
                numbers[8],
                numbers[9],
                shape);
        return new LabelStack(sheet, (int) numbers[10], new PrintShift(numbers[11], numbers[12]));
    }
}
