/* Calendar dates. Nothing here reads a clock. */
#ifndef MEASURE_DATE_H
#define MEASURE_DATE_H
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct date {
    int16_t year;
    uint8_t month, day;
};

/* Reads YYYY-MM-DD, a real day of the calendar, 1900 to 2999. */
bool date_read(struct date *out, const char *text, size_t length);
/* "YYYY-MM-DD"; buffer of at least 11 bytes. */
void date_write(char *buffer, size_t size, struct date date);
int date_compare(struct date a, struct date b);

#endif
