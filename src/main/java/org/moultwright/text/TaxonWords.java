package org.moultwright.text;

/** Scientific names as they are written where there is little room. */
public final class TaxonWords {
    private TaxonWords() {}

    /** "C. cyaneopubescens" for "Chromatopelma cyaneopubescens"; a name of one word stays whole. */
    public static String abbreviated(String taxon) {
        String name = taxon.strip();
        int space = name.indexOf(' ');
        return space < 0 ? name : name.charAt(0) + "." + name.substring(space);
    }
}
