package org.moultwright.text;

import java.util.List;
import org.moultwright.language.Texts;

/** Several things named in one sentence. */
public final class Listing {
    private Listing() {}

    /** "A1", "A1 and A2", "A1, A2 and B1". */
    public static String and(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : Texts.say("{0} and {1}", String.join(", ", names.subList(0, last)), names.get(last));
    }

    /** As {@link #and}, and where there are more than so many, the first of them: "A1, A2 and 4 more". */
    public static String few(List<String> names, int most) {
        return names.size() <= most
                ? and(names)
                : Texts.say("{0} and {1} more", String.join(", ", names.subList(0, most)), names.size() - most);
    }
}
