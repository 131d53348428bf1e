package org.moultwright.ui.chart;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.Em;

/**
 * A list of charts under the calendar they share. The calendar stands over the charts to the pixel, scroll bar or
 * not. Few rows share the room there is, up to the highest a row may be; many scroll.
 */
public final class CalendarList<T> extends VBox {
    private final ListView<T> list;
    private final ObjectProperty<Optional<T>> chosen;
    private final Rows rows;
    private final Em type = new Em();
    private final DoubleProperty scrollBarPixels = new SimpleDoubleProperty(0);

    /**
     * @param name what a screen reader calls the list
     * @param chosen the item chosen; it and the list's selection follow each other
     * @param cells makes a cell
     */
    public CalendarList(
            String name,
            ObservableList<T> items,
            ObjectProperty<Optional<T>> chosen,
            Rows rows,
            Supplier<ListCell<T>> cells) {
        this.list = new ListView<>(items);
        this.chosen = chosen;
        this.rows = rows;
        list.getStyleClass().addAll("bare", "chart-list");
        list.setAccessibleText(name);
        list.setCellFactory(shown -> measured(cells.get()));
        list.fixedCellSizeProperty()
                .bind(Bindings.createDoubleBinding(
                        this::rowPixels, list.heightProperty(), list.insetsProperty(), type.fontProperty(), items));
        followChoice();
        setVgrow(list, Priority.ALWAYS);
        getStyleClass().addAll("card", "chart-card");
    }

    public ListView<T> list() {
        return list;
    }

    /**
     * Lays everything out.
     *
     * @param before as wide as what stands left of each chart
     * @param after as wide as what stands right of each
     */
    public void lay(Region before, CalendarStrip strip, Region after, Node foot) {
        HBox.setHgrow(strip, Priority.ALWAYS);
        Region scrollBar = new Region();
        scrollBar.minWidthProperty().bind(scrollBarPixels);
        HBox head = new HBox(before, strip, after, scrollBar);
        head.getStyleClass().addAll("chart-row", "chart-head");
        getChildren().setAll(head, list, foot, type);
        maxHeightProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> snappedTopInset()
                                + head.prefHeight(-1)
                                + allRowsPixels()
                                + foot.prefHeight(innerWidth())
                                + snappedBottomInset(),
                        list.getItems(),
                        list.insetsProperty(),
                        insetsProperty(),
                        type.fontProperty(),
                        widthProperty(),
                        heightProperty()));
        prefHeightProperty().bind(maxHeightProperty());
    }

    /**
     * A cell is as wide as the list less its scroll bar. It learns its width while all is being laid out, when the
     * calendar may have its place already: so that is moved afterwards.
     */
    private ListCell<T> measured(ListCell<T> cell) {
        cell.widthProperty().addListener((observed, before, now) -> {
            double beside = Math.max(0, list.getWidth() - list.snappedLeftInset() - now.doubleValue());
            Platform.runLater(() -> scrollBarPixels.set(beside));
        });
        return cell;
    }

    private void followChoice() {
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener((observed, before, now) -> chosen.set(Optional.ofNullable(now)));
        chosen.addListener((observed, before, now) -> now.ifPresent(this::select));
        chosen.get().ifPresent(this::select);
    }

    private void select(T item) {
        if (!item.equals(list.getSelectionModel().getSelectedItem())) {
            list.getSelectionModel().select(item);
        }
    }

    private double innerWidth() {
        return getWidth() > 0 ? getWidth() - snappedLeftInset() - snappedRightInset() : -1;
    }

    private double allRowsPixels() {
        return list.getItems().size() * rows.highestEms() * type.pixels() + ringPixels();
    }

    /** What the rows leave free above and below for the ring that tells of the keyboard. */
    private double ringPixels() {
        return Math.max(2, list.snappedTopInset() + list.snappedBottomInset());
    }

    private double rowPixels() {
        double share = Math.floor(
                (list.getHeight() - ringPixels()) / Math.max(1, list.getItems().size()));
        return Math.max(rows.lowestEms() * type.pixels(), Math.min(rows.highestEms() * type.pixels(), share));
    }

    /** How high a row may be, in sizes of text. */
    public record Rows(double lowestEms, double highestEms) {}
}
