package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Brood;
import org.moultwright.text.TaxonWords;
import org.moultwright.ui.control.MadeInSight;
import org.moultwright.ui.control.Words;

/** The trays on the bench, one below the other. As many as fill a page are made at once, others once they come into sight. */
final class TakingRows extends VBox {
    /** So many fill a page; above them stand the broods to choose from, about so many in the room of one. */
    private static final int ON_A_PAGE = 13;

    private static final int BROODS_FOR_A_ROW = 7;
    private static final int FEWEST = 4;
    private static final double HEIGHT_EMS = 3;

    private final PottingViewModel model;
    private final GridPane grid = new GridPane();
    private final List<TakingRow> rows = new ArrayList<>();
    private List<Taking> unmade = List.of();
    private int line;

    TakingRows(PottingViewModel model) {
        this.model = model;
        grid.getStyleClass().add("bench-grid");
        getChildren().add(grid);
        model.onBench().benchProperty().addListener((observed, before, now) -> show());
        show();
    }

    void focusFirst() {
        rows.stream().findFirst().ifPresent(TakingRow::focusFirst);
    }

    /** Another size of pots for the tray whose field has the focus; its number is to be typed next. */
    void addSize() {
        rows.stream().filter(TakingRow::hasFocus).findFirst().ifPresent(row -> addSize(row.taking()));
    }

    /** Whether there are more than fill a page. */
    boolean isLong() {
        return takings().size() > inSight();
    }

    private int inSight() {
        int broods = model.onBench().choicesProperty().get().size();
        return Math.max(FEWEST, ON_A_PAGE - broods / BROODS_FOR_A_ROW);
    }

    private void addSize(Taking taking) {
        model.addSize(taking);
        rows.stream().filter(row -> row.taking() == taking).findFirst().ifPresent(TakingRow::focusLast);
    }

    /** What was made before of the same bench is made again. */
    private void show() {
        List<Taking> all = takings();
        boolean wasWhole = unmade.isEmpty() && rows.size() == all.size();
        int atOnce = wasWhole ? all.size() : Math.min(inSight(), all.size());
        grid.getChildren().clear();
        rows.clear();
        line = 0;
        make(all.subList(0, atOnce));
        unmade = all.subList(atOnce, all.size());
        getChildren().retainAll(grid);
        if (!unmade.isEmpty()) {
            getChildren().add(new MadeInSight(HEIGHT_EMS * unmade.size(), this::makeRest));
        }
    }

    private void makeRest() {
        make(unmade);
        unmade = List.of();
        getChildren().retainAll(grid);
    }

    private void make(List<Taking> takings) {
        model.onBench()
                .bench()
                .ifPresent(bench -> takings.forEach(taking -> {
                    Brood brood = taking.brood();
                    boolean isFirst = rows.isEmpty()
                            || !rows.get(rows.size() - 1)
                                    .taking()
                                    .brood()
                                    .code()
                                    .equals(brood.code());
                    if (bench.isOfSeveral() && isFirst) {
                        addWide(Words.strong(brood.code() + " · " + TaxonWords.abbreviated(brood.taxon())));
                    }
                    Region hairline = new Region();
                    hairline.getStyleClass().add("hairline");
                    addWide(hairline);
                    TakingRow row = new TakingRow(model, bench.name(taking), taking, () -> addSize(taking));
                    line = row.addTo(grid, line);
                    rows.add(row);
                }));
    }

    private void addWide(Node node) {
        grid.add(node, 0, line++, TakingRow.COLUMNS, 1);
    }

    private List<Taking> takings() {
        return model.onBench().bench().map(Bench::takings).orElse(List.of());
    }
}
