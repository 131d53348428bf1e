/** The invented demo room: how its folders are made, and that they hold what they should. */
@NullMarked
package org.moultwright.demo;

import org.jspecify.annotations.NullMarked;
