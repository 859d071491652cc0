#include "amount.h"

#include <assert.h>
#include <stdio.h>
#include <string.h>
#include "text.h"

struct amount amount_of_quantity(struct quantity quantity)
{
    return (struct amount){.type = AMOUNT_QUANTITY, .quantity = quantity};
}

struct amount amount_of_number(double number)
{
    return (struct amount){.type = AMOUNT_NUMBER, .quantity = {.value = number}};
}

struct amount amount_of_yesno(bool yes)
{
    return (struct amount){.type = AMOUNT_YESNO, .yes = yes};
}

struct amount amount_of_word(const char *word)
{
    return (struct amount){.type = AMOUNT_WORD, .word = word};
}

struct amount amount_of_date(struct date date)
{
    return (struct amount){.type = AMOUNT_DATE, .date = date};
}

static void write_word(char *buffer, size_t size, const char *word)
{
    static const char cut_mark[] = "…";
    size_t length = strlen(word);

    if (length < size) {
        memcpy(buffer, word, length + 1);
        return;
    }
    size_t kept = text_cut(word, length, size - sizeof cut_mark);
    memcpy(buffer, word, kept);
    memcpy(buffer + kept, cut_mark, sizeof cut_mark);
}

void amount_write(char *buffer, size_t size, struct amount amount, const struct unit *unit,
                  int digits)
{
    assert(size >= 128);
    switch (amount.type) {
    case AMOUNT_NONE:
        snprintf(buffer, size, "not given");
        break;
    case AMOUNT_QUANTITY:
    case AMOUNT_NUMBER:
        quantity_write(buffer, size, amount.quantity, unit, digits);
        break;
    case AMOUNT_YESNO:
        snprintf(buffer, size, "%s", amount.yes ? "yes" : "no");
        break;
    case AMOUNT_WORD:
        write_word(buffer, size, amount.word);
        break;
    case AMOUNT_DATE:
        date_write(buffer, size, amount.date);
        break;
    }
}
