/** The store's file before the database sees it: its exact name, who has it open, what is in it. */
@NullMarked
package org.moultwright.store.file;

import org.jspecify.annotations.NullMarked;
