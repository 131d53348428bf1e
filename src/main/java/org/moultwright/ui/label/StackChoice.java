package org.moultwright.ui.label;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.moultwright.domain.label.LabelStack;

/**
 * The sheets labels went on last, which a desk opened again begins with.
 *
 * @param last as it lies there now
 * @param keep remembers another
 */
public record StackChoice(Supplier<LabelStack> last, Consumer<LabelStack> keep) {}
