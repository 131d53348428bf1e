/** The tables of the broods, and the book made of them. */
@NullMarked
package org.moultwright.store.book;

import org.jspecify.annotations.NullMarked;
