package org.moultwright.domain.label;

/**
 * A rectangle on a sheet of paper, measured from the paper's upper left corner, in mm.
 *
 * @param leftMillimetres from the paper's left edge
 * @param topMillimetres from the paper's upper edge, downwards
 */
public record Box(double leftMillimetres, double topMillimetres, double widthMillimetres, double heightMillimetres) {
    public double rightMillimetres() {
        return leftMillimetres + widthMillimetres;
    }

    public double bottomMillimetres() {
        return topMillimetres + heightMillimetres;
    }

    public Box moved(PrintShift shift) {
        return new Box(
                leftMillimetres + shift.rightMillimetres(),
                topMillimetres + shift.downMillimetres(),
                widthMillimetres,
                heightMillimetres);
    }
}
