package org.moultwright.ui.control;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A whole sentence, so that any language can order it as it must, with the parts in it that weigh more set strong. */
public final class StrongParts {
    /** Never part of a text: both are of the private use area. */
    private static final char OPEN = '\uE000';

    private static final char CLOSE = '\uE001';

    private StrongParts() {}

    /** A part that is to be strong, to be put into the sentence. */
    public static String mark(Object part) {
        return OPEN + String.valueOf(part) + CLOSE;
    }

    /** The sentence, its marked parts strong. */
    public static TextFlow of(String sentence) {
        List<Text> texts = new ArrayList<>();
        int at = 0;
        while (at < sentence.length()) {
            boolean isStrong = sentence.charAt(at) == OPEN;
            int end = sentence.indexOf(isStrong ? CLOSE : OPEN, at);
            end = end < 0 ? sentence.length() : end;
            Text text = new Text(sentence.substring(isStrong ? at + 1 : at, end));
            if (isStrong) {
                text.getStyleClass().add("strong");
            }
            texts.add(text);
            at = isStrong ? end + 1 : end;
        }
        return new TextFlow(texts.toArray(Text[]::new));
    }
}
