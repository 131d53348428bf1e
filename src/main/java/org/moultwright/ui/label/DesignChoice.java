package org.moultwright.ui.label;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.moultwright.domain.label.LabelDesign;

/**
 * What the keeper settled on to stand on the labels of pots.
 *
 * @param chosen as it is now
 * @param choose keeps another
 */
public record DesignChoice(Supplier<LabelDesign> chosen, Consumer<LabelDesign> choose) {}
