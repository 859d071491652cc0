/* report, inside the room: the shapes of files other than designs, a line for a line; each ends in
 * NULL. */
#ifndef REPORT_SCHEMA_SHAPES_H
#define REPORT_SCHEMA_SHAPES_H

extern const char *const schema_book_shape[],
    *const schema_values_shape[], *const schema_cases_shape[], *const schema_result_shape[];
/* What books, values and cases share: the end of each of them. */
extern const char *const schema_shared_shape[];

#endif
