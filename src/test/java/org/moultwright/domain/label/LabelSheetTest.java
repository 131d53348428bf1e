package org.moultwright.domain.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelSheetTest {

    @Test
    void isNamedByItsDimensions() {
        assertThat(LabelSheets.A4_3X8.title()).isEqualTo("A4, 3 × 8, 70 × 37 mm");
        assertThat(LabelSheets.all())
                .extracting(LabelSheet::code)
                .containsExactly(
                        "a4-3x8-70x37",
                        "a4-3x7-63.5x38.1",
                        "a4-4x12-45.7x21.2",
                        "a4-5x13-38.1x21.2",
                        "a4-7x27-25.4x10",
                        "letter-3x10-66.675x25.4");
        LabelSheets.all()
                .forEach(sheet -> assertThat(LabelSheets.find(sheet.code())).contains(sheet));
        assertThat(LabelSheets.find("a4-1x1-1x1")).isEmpty();
    }

    @Test
    void numbersItsCellsAsOneReads() {
        LabelSheet sheet = LabelSheets.all().get(1);
        assertThat(sheet.cell(1)).isEqualTo(new Box(7.2, 15.15, 63.5, 38.1));
        assertThat(sheet.cell(2).leftMillimetres()).isCloseTo(73.2, within(1e-9));
        assertThat(sheet.cell(4).topMillimetres()).isCloseTo(53.25, within(1e-9));
        // The published sheet is symmetrical: as much paper below its last row as above its first.
        assertThat(sheet.cell(21).bottomMillimetres()).isCloseTo(297 - 15.15, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> sheet.cell(22));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 0", "1, 1, 1", "24, 1, 1", "25, 1, 2", "20, 5, 1", "21, 5, 2", "33, 5, 2", "1, 24, 1", "2, 24, 2"
    })
    void knowsHowManySheetsItTakes(int labels, int firstCell, int sheets) {
        assertThat(LabelSheets.A4_3X8.sheetsNeeded(labels, firstCell)).isEqualTo(sheets);
    }

    @Test
    void refusesLabelsThatOverlapOrLeaveThePaper() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 3, 8, 70, 37, 0.5, 0, 69, 37))
                .withMessage("Labels overlap sideways: a label measures 70 mm and the next begins after 69 mm.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 3, 8, 70, 37, 0.5, 0, 70, 36))
                .withMessageContaining("downwards");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 3, 8, 70, 37, 0.5, 5, 70, 37))
                .withMessage("Labels reach over the right edge: they end at 215.0 mm and the paper at 210 mm.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 3, 9, 70, 37, 0.5, 0, 70, 37))
                .withMessageContaining("lower edge");
    }

    @Test
    void aLabelLargerThanItsPageIsRefusedInWords() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 1, 1, 250, 37, 0, 0, 250, 37))
                .withMessage("Labels 250 mm wide do not fit: they are at least 5 mm, and the page is 210 mm wide.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LabelSheet(Paper.A4.page(), 1, 1, 30, 20, 0, 0, 30, 20, LabelShape.ROUND))
                .withMessage("Labels that are round are as high as wide: 20 is not 30 mm.");
    }

    @Test
    void aRollIsOneLabelAPage() {
        LabelSheet roll = LabelSheet.ofRoll(57, 32);
        assertThat(roll.title()).isEqualTo("roll, 57 × 32 mm");
        assertThat(roll.cell(1)).isEqualTo(new Box(0, 0, 57, 32));
        assertThat(roll.sheetsNeeded(7, 1)).isEqualTo(7);
        assertThat(PageSize.of(210, 297)).isEqualTo(Paper.A4.page());
        LabelSheets.everything()
                .forEach(sheet -> assertThat(LabelSheets.find(sheet.code())).contains(sheet));
        assertThat(LabelSheets.everything()).extracting(LabelSheet::code).doesNotHaveDuplicates();
    }
}
