/** How animals pass from stage to stage: what was seen as evidence, the model of it, and its posterior. */
@NullMarked
package org.moultwright.compute.stage;

import org.jspecify.annotations.NullMarked;
