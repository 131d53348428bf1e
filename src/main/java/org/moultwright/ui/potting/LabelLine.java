package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;

/** What stands on a label beneath code and name. */
final class LabelLine {
    private LabelLine() {}

    /**
     * "sling 5 May 26, 30 ml": of these what the design has, then the keeper's own words. What is empty is passed over.
     *
     * @param reached the stage, and the day it was reached
     */
    static String of(LabelDesign design, String reached, String potSize, String brood, String tray) {
        List<String> words = new ArrayList<>();
        add(words, design, LabelPart.STAGE_AND_DAY, reached);
        add(words, design, LabelPart.POT_SIZE, potSize);
        add(words, design, LabelPart.BROOD, brood);
        add(words, design, LabelPart.TRAY, tray);
        words.add(design.ownWords());
        return words.stream().map(String::strip).filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
    }

    private static void add(List<String> words, LabelDesign design, LabelPart part, String word) {
        if (design.has(part)) {
            words.add(word);
        }
    }
}
