package org.moultwright.domain.label;

/** The paper sizes label sheets come in: A4 of ISO 216, and Letter of 8.5 by 11 inches. */
public enum Paper {
    A4("A4", "a4", 210, 297),
    LETTER("Letter", "letter", 215.9, 279.4);

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
