#include "quantity_fault.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>
#include "measure_table.h"
#include "text.h"
#include "unit.h"

bool fault_set(struct quantity_fault *fault, const char *code, size_t offset, const char *format,
               ...)
{
    char whole[512];
    va_list arguments;

    va_start(arguments, format);
    vsnprintf(whole, sizeof whole, format, arguments);
    va_end(arguments);

    size_t kept = text_cut(whole, strlen(whole), sizeof fault->message - 1);
    memcpy(fault->message, whole, kept);
    fault->message[kept] = '\0';
    fault->code = code;
    fault->offset = offset;
    return false;
}

void fault_write_kind(char *buffer, size_t size, struct dimension dimension)
{
    enum measure measure;
    char units[64];

    if (measure_of(&measure, dimension)) {
        const char *other = measure == MOMENT ? " or an energy" : "";
        snprintf(buffer, size, "%s%s", measure_row_at(measure)->article, other);
        return;
    }
    dimension_write_units(units, sizeof units, dimension);
    snprintf(buffer, size, "a quantity in %s", units);
}

void fault_write_need(char *buffer, size_t size, const struct dimension *want)
{
    enum measure measure;
    char kind[80], names[80];

    if (!want) {
        snprintf(buffer, size, "a number and its unit are needed, such as 18 in");
        return;
    }
    fault_write_kind(kind, sizeof kind, *want);
    if (!measure_of(&measure, *want)) {
        snprintf(buffer, size, "%s is needed", kind);
        return;
    }
    if (measure == PURE_NUMBER) {
        snprintf(buffer, size, "%s is needed, such as 0.8 or 80 %%", kind);
        return;
    }
    unit_write_names(names, sizeof names, *want);
    snprintf(buffer, size, "%s is needed, such as %s; units: %s%s", kind,
             measure_row_at(measure)->example, names,
             measure == ANGLE ? ", or a slope as 4/12, 4:12 or 4 in 12" : "");
}

void fault_write_text(char *buffer, size_t size, const char *text, size_t length)
{
    static const char cut_mark[] = "…";
    size_t at = 0;
    size_t kept = text_cut(text, length, length < size ? length : size - sizeof cut_mark);

    /* Nothing that is not text gets into a message; the mark then needs its room. */
    if (!text_is_utf8(text, kept, &at))
        kept = text_cut(text, at, size - sizeof cut_mark);
    memcpy(buffer, text, kept);
    for (size_t i = 0; i < kept; i++)
        if ((unsigned char)buffer[i] < 0x20 || buffer[i] == 0x7F)
            buffer[i] = '?';
    if (kept < length)
        memcpy(buffer + kept, cut_mark, sizeof cut_mark);
    else
        buffer[kept] = '\0';
}
