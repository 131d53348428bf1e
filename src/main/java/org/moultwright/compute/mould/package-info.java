/** How far the air of a container has favoured mould, as an index of exposure and never as a date. */
@NullMarked
package org.moultwright.compute.mould;

import org.jspecify.annotations.NullMarked;
