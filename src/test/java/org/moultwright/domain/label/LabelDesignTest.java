package org.moultwright.domain.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelDesignTest {
    @Test
    void partsGoOnAndOffOneByOne() {
        LabelDesign plain = LabelDesign.STANDARD.with(LabelPart.SQUARE, false).with(LabelPart.TRAY, true);
        assertThat(plain.parts())
                .containsExactlyInAnyOrder(LabelPart.NAME, LabelPart.STAGE_AND_DAY, LabelPart.POT_SIZE, LabelPart.TRAY);
        assertThat(plain.with(LabelPart.TRAY, true)).isEqualTo(plain);
    }

    @Test
    void whatIsWrittenReadsBack() {
        LabelDesign none = LabelDesign.STANDARD;
        for (LabelPart part : LabelPart.values()) {
            none = none.with(part, false);
            assertThat(LabelDesign.read(none.written())).contains(none.parts());
        }
        assertThat(none.written()).isEmpty();
        assertThat(LabelDesign.read("name, photo")).isEmpty();
    }
}
