package org.moultwright.ui.potting;

import java.util.function.Consumer;
import org.moultwright.domain.code.CodePattern;

/**
 * The pattern of codes the keeper settled on.
 *
 * @param chosen the one to begin with
 * @param choose keeps another
 */
public record PatternChoice(CodePattern chosen, Consumer<CodePattern> choose) {}
