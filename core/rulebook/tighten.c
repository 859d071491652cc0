#include "resolving.h"
#include <string.h>

bool is_company(const struct resolving *resolving, size_t book)
{
    return resolving->books[book].book->role == ROLE_COMPANY;
}

/* What an entry says at an elevation; NULL elevation: it has no bands. NULL: nothing there. */
static const struct amount *amount_at(const struct entry *entry, const struct quantity *elevation)
{
    if (!entry->bands)
        return &entry->said.is;
    struct value value = {.state = VALUE_IN_FORCE, .entry = entry};
    return elevation ? value_at_elevation(&value, *elevation) : NULL;
}

static bool is_looser_amount(const struct declaration *declaration, const struct amount *company,
                             const struct amount *below)
{
    struct quantity_fault fault;
    int order = 0;
    if (company->type == AMOUNT_NONE || below->type == AMOUNT_NONE)
        return false; /* unreadable, told already */
    if (company->type == AMOUNT_YESNO)
        return company->yes != below->yes;
    if (company->type == AMOUNT_WORD)
        return strcmp(company->word, below->word) != 0;
    if (!quantity_compare(&order, company->quantity, below->quantity, &fault))
        return true;
    switch (declaration->stricter) {
    case STRICTER_LARGER:
        return order < 0;
    case STRICTER_SMALLER:
        return order > 0;
    case STRICTER_NEITHER:
        break;
    }
    return order != 0;
}

static bool is_looser_at(const struct declaration *declaration, const struct entry *company,
                         const struct entry *below, const struct quantity *elevation)
{
    const struct amount *wanted = amount_at(below, elevation);
    const struct amount *given = amount_at(company, elevation);
    return wanted && (!given || is_looser_amount(declaration, given, wanted));
}

bool is_looser(const struct declaration *declaration, const struct entry *company,
               const struct entry *below)
{
    /* Both are steps, so the ends of the steps show everything but what is above them all. */
    for (size_t i = 0; i < company->band_count; i++)
        if (is_looser_at(declaration, company, below, &company->bands[i].up_to))
            return true;
    for (size_t i = 0; i < below->band_count; i++)
        if (is_looser_at(declaration, company, below, &below->bands[i].up_to))
            return true;
    return !below->bands && is_looser_at(declaration, company, below, NULL);
}
