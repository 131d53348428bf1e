/** Work done while the keeper goes on: run aside, with progress, to be cancelled, losing no exception. */
@NullMarked
package org.moultwright.task;

import org.jspecify.annotations.NullMarked;
