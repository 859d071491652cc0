#include "listing.h"

#include <string.h>

#include "page.h"

enum { WIDTH = 80 };

const char *role_name(enum book_role role)
{
    static const char *const names[] = {[ROLE_MODEL_CODE] = "model code",
                                        [ROLE_AUTHORITY] = "authority",
                                        [ROLE_UTILITY] = "utility",
                                        [ROLE_COMPANY] = "company"};
    return names[role];
}

static bool tell(struct page *page, const char *label, const char *text)
{
    if (text == NULL)
        return false;
    page_paragraph(page, 4, label, STYLE_PLAIN, 14, text);
    return true;
}

static const char *act_text(const struct act *act, struct arena *arena)
{
    char from[16] = "";
    if (act->from.year != 0)
        date_write(from, sizeof from, act->from);
    return arena_format(arena, "%s %s it%s%s%s%s", act->book->name, act->verb,
                        from[0] ? " from " : "", from, act->cite != NULL ? ": " : "",
                        act->cite != NULL ? act->cite : "");
}

static bool write_rule(struct page *page, const struct rule_entry *entry, struct arena *arena)
{
    const struct rule *rule = entry->rule;
    const char *label = arena_format(arena, "%s%s", rule->id, rule->holds ? ":" : " (deleted):");
    if (label == NULL)
        return false;
    page_paragraph(page, 2, label, rule->holds ? STYLE_STRONG : STYLE_FAINT, 4,
                   entry->title != NULL ? entry->title : "its card could not be read");
    if (!tell(page, "from",
              arena_format(arena, "%s%s%s%s%s", rule->book->name, rule->edition != NULL ? " " : "",
                           rule->edition != NULL ? rule->edition : "",
                           entry->cite != NULL ? ", " : "",
                           entry->cite != NULL ? entry->cite : "")))
        return false;
    if (rule->text_by != NULL && rule->text_by != rule->book &&
        !tell(page, "text by", rule->text_by->name))
        return false;
    for (size_t i = 0; i < rule->act_count; i++)
        if (!tell(page, i == 0 ? "acts" : "", act_text(&rule->acts[i], arena)))
            return false;
    return true;
}

bool list_rules_as_text(struct text *out, const struct rulebook *rulebook,
                        const struct rule_entry *entries, size_t count)
{
    struct arena *arena = arena_new();
    struct page page = {out, WIDTH, false};
    bool is_written = arena != NULL;
    size_t holding = 0;
    char on[16];
    date_write(on, sizeof on, rulebook->on);
    text_add_format(out, "Rules of %s\n\n", on);
    for (size_t i = 0; is_written && i < count; i++) {
        is_written = write_rule(&page, &entries[i], arena);
        holding += entries[i].rule->holds;
    }
    text_add_format(out, "%s%zu in force, %zu deleted.\n", count > 0 ? "\n" : "", holding,
                    count - holding);
    arena_free(arena);
    return is_written && !out->is_short;
}

static const char *editions_text(const struct book *book, struct arena *arena)
{
    const char *text = "";
    for (size_t i = 0; book->editions != NULL && book->editions[i] != NULL && text != NULL; i++)
        text = arena_format(arena, "%s%s%s", text, i > 0 ? ", " : "", book->editions[i]);
    return text;
}

static bool write_book(struct page *page, const struct book *book, struct arena *arena)
{
    const char *label = arena_format(arena, "%s:", book->name);
    const char *editions = editions_text(book, arena);
    if (label == NULL || editions == NULL)
        return false;
    page_paragraph(page, 0, label, STYLE_STRONG, 4, book->title != NULL ? book->title : "");
    if (!tell(page, "role", role_name(book->role)))
        return false;
    if (editions[0] != '\0' && !tell(page, "editions", editions))
        return false;
    if (book->scope != NULL && !tell(page, "scope", book->scope))
        return false;
    return tell(page, "path", book->directory);
}

bool list_books_as_text(struct text *out, const struct book *const *books, size_t count)
{
    struct arena *arena = arena_new();
    struct page page = {out, WIDTH, false};
    bool is_written = arena != NULL;
    for (size_t i = 0; is_written && i < count; i++)
        is_written = write_book(&page, books[i], arena);
    if (count == 0)
        text_add_word(out, "There is no book on the search path.\n");
    arena_free(arena);
    return is_written && !out->is_short;
}
