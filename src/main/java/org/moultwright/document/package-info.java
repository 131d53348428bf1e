/** Documents: pot labels as PDF. The PDF and code-square libraries are known here alone. */
@NullMarked
package org.moultwright.document;

import org.jspecify.annotations.NullMarked;
