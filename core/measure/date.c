#include "date.h"

#include <assert.h>
#include <stdio.h>

enum { YEAR_FIRST = 1900, YEAR_LAST = 2999 };

static int days_in(int year, int month)
{
    static const int days[12] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    bool is_leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;

    return days[month - 1] + (month == 2 && is_leap);
}

/* Reads `count` digits, or -1. */
static int digits_at(const char *text, size_t count)
{
    int number = 0;

    for (size_t i = 0; i < count; i++) {
        if (text[i] < '0' || text[i] > '9')
            return -1;
        number = number * 10 + (text[i] - '0');
    }
    return number;
}

bool date_read(struct date *out, const char *text, size_t length)
{
    if (length != 10 || text[4] != '-' || text[7] != '-')
        return false;

    int year = digits_at(text, 4), month = digits_at(text + 5, 2), day = digits_at(text + 8, 2);
    if (year < YEAR_FIRST || year > YEAR_LAST || month < 1 || month > 12)
        return false;
    if (day < 1 || day > days_in(year, month))
        return false;
    *out = (struct date){.year = (int16_t)year, .month = (uint8_t)month, .day = (uint8_t)day};
    return true;
}

void date_write(char *buffer, size_t size, struct date date)
{
    assert(size >= 11);
    snprintf(buffer, size, "%04d-%02d-%02d", date.year, date.month, date.day);
}

int date_compare(struct date a, struct date b)
{
    int left = (a.year * 100 + a.month) * 100 + a.day;
    int right = (b.year * 100 + b.month) * 100 + b.day;

    return (left > right) - (left < right);
}
