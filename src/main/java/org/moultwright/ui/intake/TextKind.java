package org.moultwright.ui.intake;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.moultwright.language.Texts;

/** Encodings and delimiters in the keeper's words. */
final class TextKind {
    static final List<Charset> CHARSETS = List.of(
            StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE);
    static final List<Character> DELIMITERS = List.of(';', ',', '\t', '|', ' ');

    private TextKind() {}

    static String words(Charset charset) {
        return charset.equals(StandardCharsets.ISO_8859_1) ? "Latin-1" : charset.name();
    }

    static String words(char delimiter) {
        return switch (delimiter) {
            case ';' -> Texts.say("semicolons");
            case ',' -> Texts.say("commas");
            case '\t' -> Texts.say("tabs");
            case ' ' -> Texts.say("blanks");
            default -> Texts.say("bars");
        };
    }
}
