package org.moultwright.language;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented language made of the template: every text in marks, with accents, two fifths longer. What stands on screen
 * without marks was never said; what has no room now has none in a wordy language.
 */
public final class PseudoLanguage {
    public static final String OPEN = "«";
    public static final String CLOSE = "»";

    private static final String PLAIN = "aeiouyAEIOUcn";
    private static final String ACCENTED = "àéîöûýÀÉÎÖÛçñ";
    private static final double LONGER = 0.4;

    private PseudoLanguage() {}

    /** Through the same file a translator writes. */
    public static Language made() throws IOException {
        return TranslationFile.read(lines());
    }

    /** As the lines of that file. */
    public static List<String> lines() throws IOException {
        List<String> lines = new ArrayList<>(List.of("msgid \"\"", "msgstr \"Language: en-x-pseudo\\n\"", ""));
        for (TextsTemplate.Text text : TextsTemplate.texts().keySet()) {
            lines.add("msgid " + TextsTemplate.quoted(text.text()));
            if (text.plural().isPresent()) {
                String many = text.plural().get();
                lines.add("msgid_plural " + TextsTemplate.quoted(many));
                lines.add("msgstr[0] " + TextsTemplate.quoted(of(text.text())));
                lines.add("msgstr[1] " + TextsTemplate.quoted(of(many)));
            } else {
                lines.add("msgstr " + TextsTemplate.quoted(of(text.text())));
            }
        }
        return lines;
    }

    private static String of(String text) {
        StringBuilder said = new StringBuilder(OPEN);
        boolean inPlace = false;
        int letters = 0;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            inPlace = sign == '{' || (inPlace && sign != '}');
            int accent = inPlace ? -1 : PLAIN.indexOf(sign);
            said.append(accent < 0 ? sign : ACCENTED.charAt(accent));
            letters += inPlace || sign == '}' ? 0 : 1;
        }
        int more = (int) Math.ceil(LONGER * letters) - 2;
        for (int i = 0; i < more; i++) {
            said.append(i % 6 == 0 && i + 1 < more && letters > 12 ? ' ' : 'x');
        }
        return said.append(CLOSE).toString();
    }
}
