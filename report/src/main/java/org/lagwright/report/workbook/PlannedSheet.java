package org.lagwright.report.workbook;

import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;

/**
 * One sheet of a workbook.
 *
 * @param pagesWide over how many pages its columns print
 * @param content writes everything but the rows of the table
 * @param table its table, last on the sheet; null where it has none
 */
record PlannedSheet(
    String name, int pagesWide, BiConsumer<Sheet, Styles> content, @Nullable Table<?> table) {}
