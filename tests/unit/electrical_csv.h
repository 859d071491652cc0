/* Reads the reference tables of tests/electrical: comma-separated, quotes around cells with commas.
 */
#ifndef TESTS_ELECTRICAL_CSV_H
#define TESTS_ELECTRICAL_CSV_H
#include "check.h"

enum { CSV_ROWS = 100, CSV_COLUMNS = 16 };

struct csv {
    char text[40000];
    char *cells[CSV_ROWS][CSV_COLUMNS]; /* the first row holds the names */
    int rows, columns;                  /* rows without the first */
};

/* Cuts one cell off; returns what ended it: ',', '\n' or 0. Quotes are removed in place. */
static inline char csv_cut(char **at, char **cell)
{
    char *from = *at, *to = *at;
    bool is_quoted = false;
    *cell = to;
    while (*from != '\0' && (is_quoted || (*from != ',' && *from != '\n'))) {
        if (*from == '"')
            is_quoted = !is_quoted;
        else
            *to++ = *from;
        from++;
    }
    char end = *from;
    *at = end != '\0' ? from + 1 : from;
    *to = '\0';
    return end;
}

/* The file must be there and fit: a test without its table has failed. */
static inline void csv_read(struct csv *csv, const char *name)
{
    char path[500];
    snprintf(path, sizeof path, "%s/electrical/%s", TESTS_DIR, name);
    memset(csv, 0, sizeof *csv);
    FILE *file = fopen(path, "rb");
    size_t length = file != NULL ? fread(csv->text, 1, sizeof csv->text - 1, file) : 0;
    if (file != NULL)
        fclose(file);
    CHECK(length > 0 && length < sizeof csv->text - 1, path);
    char *at = csv->text;
    int row = 0, column = 0;
    while (*at != '\0' && row < CSV_ROWS && column < CSV_COLUMNS) {
        char end = csv_cut(&at, &csv->cells[row][column++]);
        if (end == ',')
            continue;
        if (row == 0)
            csv->columns = column;
        CHECK(column == csv->columns, "every row has as many cells as the first");
        row++;
        column = 0;
    }
    csv->rows = row - 1;
    CHECK(csv->rows > 0, "a table has rows");
}

/* A cell by the name of its column; rows count from 0. */
static inline const char *csv_cell(const struct csv *csv, int row, const char *column)
{
    for (int i = 0; i < csv->columns; i++)
        if (strcmp(csv->cells[0][i], column) == 0)
            return csv->cells[row + 1][i];
    CHECK(false, column);
    return "";
}

static inline double csv_number(const struct csv *csv, int row, const char *column)
{
    return strtod(csv_cell(csv, row, column), NULL);
}

#endif
