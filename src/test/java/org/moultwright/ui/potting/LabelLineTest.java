package org.moultwright.ui.potting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;

class LabelLineTest {
    @Test
    void saysWhatTheDesignHasAndPassesOverWhatIsEmpty() {
        LabelDesign design = LabelDesign.STANDARD;
        assertThat(line(design, " 30 ml ")).isEqualTo("sling 5 May 26, 30 ml");
        assertThat(line(design, "")).isEqualTo("sling 5 May 26");
        assertThat(line(design.with(LabelPart.STAGE_AND_DAY, false), "30 ml")).isEqualTo("30 ml");
        assertThat(line(
                        design.with(LabelPart.BROOD, true)
                                .with(LabelPart.TRAY, true)
                                .withOwnWords(" back room "),
                        ""))
                .isEqualTo("sling 5 May 26, CC-26-A, A1, back room");
    }

    private static String line(LabelDesign design, String potSize) {
        return LabelLine.of(design, "sling 5 May 26", potSize, "CC-26-A", "A1");
    }
}
