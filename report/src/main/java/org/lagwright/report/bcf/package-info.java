/**
 * Issues for the designers as a BIM Collaboration Format file, 2.1 or 3.0: findings, questions and
 * uncovered elements, grouped by cause, each with its elements, a camera and a picture. Knows a
 * finished takeoff; decides no number. Start reading at {@link
 * org.lagwright.report.bcf.BcfArchive}.
 */
@NullMarked
package org.lagwright.report.bcf;

import org.jspecify.annotations.NullMarked;
