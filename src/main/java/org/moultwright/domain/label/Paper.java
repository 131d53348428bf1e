package org.moultwright.domain.label;

import java.util.Locale;
import java.util.Set;

/** The paper sizes label sheets come in: A4 of ISO 216, and Letter of 8.5 by 11 inches. */
public enum Paper {
    A4("A4", "a4", 210, 297),
    LETTER("Letter", "letter", 215.9, 279.4);

    /**
     * Countries and territories that write on Letter: Unicode Technical Standard 35 (CLDR 46), part 6, supplemental data,
     * {@code paperSize type="US-Letter"}. All others write on A4.
     */
    private static final Set<String> LETTER_COUNTRIES =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private final String title;
    private final String key;
    private final double widthMillimetres;
    private final double heightMillimetres;

    Paper(String title, String key, double widthMillimetres, double heightMillimetres) {
        this.title = title;
        this.key = key;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    /** What is usual where a keeper lives. */
    public static Paper usual(Locale locale) {
        return LETTER_COUNTRIES.contains(locale.getCountry()) ? LETTER : A4;
    }

    public String title() {
        return title;
    }

    /** Its size, as a page of labels. */
    public PageSize page() {
        return new PageSize(title, key, widthMillimetres, heightMillimetres);
    }

    /** The name this paper has in a sheet's code. */
    public String key() {
        return key;
    }

    public double widthMillimetres() {
        return widthMillimetres;
    }

    public double heightMillimetres() {
        return heightMillimetres;
    }
}
