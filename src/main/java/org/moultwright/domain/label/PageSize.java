package org.moultwright.domain.label;

import org.moultwright.domain.Require;

/**
 * How large the page is that labels are printed on: a sheet of paper, or one label of a roll. Lengths are in mm.
 *
 * @param title as it is shown, such as "A4" or "57 × 32 mm"
 * @param key the name it has in a sheet's code
 * @param widthMillimetres across
 * @param heightMillimetres down
 */
public record PageSize(String title, String key, double widthMillimetres, double heightMillimetres) {
    /** A page is at least this wide and high. */
    public static final double LEAST_MILLIMETRES = 10;

    public static final double MOST_MILLIMETRES = 1_000;

    public PageSize {
        Require.text("title", title);
        Require.within("pageWidthMillimetres", widthMillimetres, LEAST_MILLIMETRES, MOST_MILLIMETRES);
        Require.within("pageHeightMillimetres", heightMillimetres, LEAST_MILLIMETRES, MOST_MILLIMETRES);
    }

    /** A page of any size; one of a known paper's size is that paper. */
    public static PageSize of(double widthMillimetres, double heightMillimetres) {
        for (Paper paper : Paper.values()) {
            if (paper.widthMillimetres() == widthMillimetres && paper.heightMillimetres() == heightMillimetres) {
                return paper.page();
            }
        }
        String width = LabelSheet.plain(widthMillimetres);
        String height = LabelSheet.plain(heightMillimetres);
        return new PageSize(width + " × " + height + " mm", width + "x" + height, widthMillimetres, heightMillimetres);
    }
}
