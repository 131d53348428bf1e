package org.moultwright.ui.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.label.LabelSheets;

/** A sheet that cannot be is told of at the field to be mended. */
class OwnSheetTest {
    private final OwnSheet own = new OwnSheet();

    @BeforeEach
    void beginWithAKnownSheet() {
        own.show(LabelSheets.A4_3X8);
        assertThat(own.faultyProperty().get()).isEmpty();
    }

    @Test
    void theMeasureThatDoesNotFitIsMarked() {
        requireMarked(SheetDimension.WIDTH, "500", "Labels 500 mm wide do not fit");
        requireMarked(SheetDimension.COLUMNS, "4", "Labels reach over the right edge");
        requireMarked(SheetDimension.ROWS, "999", "Labels reach over the lower edge");
        requireMarked(SheetDimension.PITCH_Y, "20", "Labels overlap downwards");
        requireMarked(SheetDimension.LEFT, "300", "Labels cannot begin 300 mm from the left edge");
        requireMarked(SheetDimension.TOP, "298", "Labels cannot begin 298 mm from the upper edge");
        requireMarked(SheetDimension.HEIGHT, "1,5", "Labels 1.5 mm high do not fit");
    }

    @Test
    void whatNoPageCanBeIsMarked() {
        requireMarked(SheetDimension.PAGE_WIDTH, "5000", "A page is 10 to 1000 mm wide");
        requireMarked(SheetDimension.PAGE_HEIGHT, "9", "A page is 10 to 1000 mm wide");
        requireMarked(SheetDimension.ROWS, "0", "A page is 10 to 1000 mm wide");
    }

    @Test
    void whatIsNoNumberIsMarked() {
        requireMarked(SheetDimension.LEFT, "", "Every dimension is a number above 0");
    }

    private void requireMarked(SheetDimension dimension, String typed, String sentence) {
        String before = own.textProperty(dimension).get();
        own.textProperty(dimension).set(typed);
        assertThat(own.faultyProperty().get()).containsExactly(dimension);
        assertThat(own.problemProperty().get()).startsWith(sentence);
        own.textProperty(dimension).set(before);
        assertThat(own.faultyProperty().get()).isEmpty();
        assertThat(own.problemProperty().get()).isEmpty();
    }
}
