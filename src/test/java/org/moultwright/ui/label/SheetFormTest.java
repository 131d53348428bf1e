package org.moultwright.ui.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.domain.label.PageSize;
import org.moultwright.domain.label.PrintShift;

/** A desk opened again goes on with the sheets as they lie there. */
class SheetFormTest {
    @Test
    void aStackIsLaidInAsItWasLeft() {
        LabelSheet own = new LabelSheet(PageSize.of(150, 99.5), 2, 3, 50.25, 20, 4.5, 3, 60, 25.125);
        for (LabelSheet sheet : new LabelSheet[] {LabelSheets.everything().get(7), own}) {
            LabelStack left = new LabelStack(sheet, 4, new PrintShift(0.4, -1.5));
            SheetForm form = new SheetForm(left);
            assertThat(form.stack()).contains(left);
            assertThat(form.own().usedProperty().get()).isEqualTo(sheet.equals(own));
            assertThat(form.own().textProperty(SheetDimension.WIDTH).get())
                    .isEqualTo(SheetDimension.written(sheet.labelWidthMillimetres()));
            form.sheetProperty().set(LabelSheets.everything().get(2));
            form.own().usedProperty().set(false);
            assertThat(form.laidSheet()).isEqualTo(LabelSheets.everything().get(2));
            form.firstCellProperty().set(OptionalInt.empty());
            assertThat(form.stack()).isEmpty();
        }
    }

    /** Else the cells of one sheet would be laid on the paper of another. */
    @Test
    void whoIsToldOfAnotherSheetFindsItThere() {
        SheetForm form = new SheetForm(LabelStack.NEW);
        form.own().usedProperty().set(true);
        List<LabelSheet> found = new ArrayList<>();
        form.whenChanged(() -> found.add(form.laidSheet()));
        LabelSheet roll = LabelSheet.ofRoll(57, 32);
        form.sheetProperty().set(roll);
        assertThat(found).isNotEmpty().containsOnly(roll);
    }
}
