/** Photos of trays: pictures as files in a folder beside the store. */
@NullMarked
package org.moultwright.store.photo;

import org.jspecify.annotations.NullMarked;
