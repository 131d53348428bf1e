package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.Require;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PrintShift;

/**
 * Labels to be put on sheets of one kind, in order, from the first free cell of the first sheet.
 *
 * @param firstCell the first free cell, from 1
 * @param labels at least one
 * @param madeAt the time the document bears; the same job gives the same bytes
 */
public record LabelJob(LabelSheet sheet, int firstCell, PrintShift shift, List<PotLabel> labels, Instant madeAt) {
    public LabelJob {
        Require.within("firstCell", firstCell, 1, sheet.cells());
        labels = List.copyOf(labels);
        Require.that(!labels.isEmpty(), "labels is empty but must hold at least 1");
    }

    public int sheets() {
        return sheet.sheetsNeeded(labels.size(), firstCell);
    }
}
