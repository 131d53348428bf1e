/** What the keeper does, one class a deed, and the ports these need from the outside. */
@NullMarked
package org.moultwright.workflow;

import org.jspecify.annotations.NullMarked;
