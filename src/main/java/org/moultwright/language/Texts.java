package org.moultwright.language;

import org.jspecify.annotations.Nullable;

/**
 * Every text a keeper reads goes through here, so that a translation is one file.
 *
 * <p>The text in the source is English and is the key. Places in it are numbered, as in {@code "{0} of {1}"}, so that
 * a language can order them as it likes. The language is chosen once, before the desk is opened: texts kept in
 * constants are in it as well.
 */
public final class Texts {
    private static volatile Language language = Language.ENGLISH;

    private Texts() {}

    /** Speaks a language from here on. To be called before anything that holds texts is loaded. */
    public static void use(Language chosen) {
        language = chosen;
    }

    public static Language language() {
        return language;
    }

    /** A text in the keeper's language, with its places filled. */
    public static String say(String text, @Nullable Object... places) {
        return filled(language.of(text), places);
    }

    /**
     * A text that depends on a count. The count itself stands in it only where it is one of the places.
     *
     * @param one the text for exactly one
     * @param many the text for any other count; the key of the forms a language has
     */
    public static String count(long count, String one, String many, @Nullable Object... places) {
        return filled(language.of(count, one, many), places);
    }

    /**
     * A text that is kept in the store or a file as it stands here, so that no language changes what was written; it is
     * said where it is shown.
     */
    public static String kept(String text) {
        return text;
    }

    /** A brace around anything but the number of a place is itself. */
    private static String filled(String text, @Nullable Object... places) {
        int open = places.length == 0 ? -1 : text.indexOf('{');
        if (open < 0) {
            return text;
        }
        StringBuilder filled = new StringBuilder(text.length() + 16 * places.length);
        int done = 0;
        for (; open >= 0; open = text.indexOf('{', open + 1)) {
            int close = text.indexOf('}', open);
            int place = place(text, open, close);
            if (place >= 0 && place < places.length) {
                filled.append(text, done, open).append(Numbers.shown(places[place]));
                done = close + 1;
            }
        }
        return filled.append(text, done, text.length()).toString();
    }

    private static int place(String text, int open, int close) {
        int digits = close - open - 1;
        if (digits < 1 || digits > 2) {
            return -1;
        }
        int place = 0;
        for (int i = open + 1; i < close; i++) {
            char sign = text.charAt(i);
            if (sign < '0' || sign > '9') {
                return -1;
            }
            place = 10 * place + (sign - '0');
        }
        return place;
    }
}
