package org.moultwright.ui.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import org.moultwright.domain.label.Box;
import org.moultwright.domain.label.LabelShape;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.language.Texts;

/**
 * One sheet of paper, as large as there is room: the printed page, the labels' edges over it, the used ones
 * greyed. A click on a label of the first sheet makes it the first free one.
 */
final class SheetPreview extends Region {
    private final SheetForm form;
    private final PreviewModel preview;
    private final Region paper = new Region();
    private final ImageView print = new ImageView();
    private final List<Label> cells = new ArrayList<>();

    /** The sheet the cells are of. */
    private LabelSheet shown;

    SheetPreview(SheetForm form, PreviewModel preview) {
        this.form = form;
        this.preview = preview;
        this.shown = form.laidSheet();
        paper.getStyleClass().add("paper");
        print.setMouseTransparent(true);
        getStyleClass().add("sheet-preview");
        form.whenChanged(this::showCells);
        preview.pageProperty().addListener((observed, before, now) -> showCells());
        preview.pictureProperty().addListener((observed, before, now) -> showPicture(now));
        showCells();
        showPicture(preview.pictureProperty().get());
    }

    @Override
    protected void layoutChildren() {
        LabelSheet sheet = shown;
        double scale = Math.min(
                getWidth() / sheet.paper().widthMillimetres(),
                getHeight() / sheet.paper().heightMillimetres());
        double paperWidth = sheet.paper().widthMillimetres() * scale;
        double left = (getWidth() - paperWidth) / 2;
        double paperHeight = sheet.paper().heightMillimetres() * scale;
        paper.resizeRelocate(left, 0, paperWidth, paperHeight);
        print.relocate(left, 0);
        print.setFitWidth(paperWidth);
        print.setFitHeight(paperHeight);
        for (int i = 0; i < cells.size(); i++) {
            Box box = sheet.cell(i + 1);
            cells.get(i)
                    .resizeRelocate(
                            left + box.leftMillimetres() * scale,
                            box.topMillimetres() * scale,
                            box.widthMillimetres() * scale,
                            box.heightMillimetres() * scale);
        }
    }

    private void showCells() {
        shown = form.laidSheet();
        cells.clear();
        int used = preview.pageProperty().get() == 0 ? form.firstCell().orElse(1) - 1 : 0;
        for (int cell = 1; cell <= shown.cells(); cell++) {
            cells.add(cell(cell, cell <= used));
        }
        List<Node> layers = new ArrayList<>(List.of(paper, print));
        layers.addAll(cells);
        getChildren().setAll(layers);
        setAccessibleText(Texts.say("sheet preview, first free label {0}", used + 1));
    }

    private Label cell(int number, boolean isUsed) {
        Label cell = new Label(isUsed ? Texts.say("used") : "");
        cell.setAlignment(Pos.CENTER);
        cell.getStyleClass().setAll("label-cell");
        if (shown.shape() == LabelShape.ROUND) {
            cell.getStyleClass().add("round");
        }
        if (isUsed) {
            cell.getStyleClass().add("used");
        }
        cell.setOnMouseClicked(event -> {
            if (preview.pageProperty().get() == 0) {
                form.firstCellProperty().set(OptionalInt.of(number));
            }
        });
        return cell;
    }

    private void showPicture(Optional<Image> picture) {
        print.setImage(picture.orElse(null));
        requestLayout();
    }
}
