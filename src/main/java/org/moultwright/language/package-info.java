/** The language and the forms a keeper reads: texts, numbers, dates, temperatures. Needs nothing but the JDK. */
@NullMarked
package org.moultwright.language;

import org.jspecify.annotations.NullMarked;
