/* plumbrule schema: what other programs and readers need to know of our files. */
#include "desk.h"

#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "cases.h"
#include "report.h"
#include "review.h"
#include "schema.h"

static const char *const topics[] = {"design",   "book",  "values",      "cases", "result", "stubs",
                                     "luacheck", "facts", "calculators", "words", "rules"};

/* What needs the closed room to say which words there are. */
static bool write_words(struct desk *desk, const char *topic, struct bench *bench)
{
    const char *const *words;
    size_t count;
    if (!judge_list_words(&words, &count, bench->judge, desk->arena))
        return false;
    return strcmp(topic, "stubs") == 0      ? stubs_write(&desk->out, words, count)
           : strcmp(topic, "luacheck") == 0 ? luacheck_write(&desk->out, "return ", words, count)
                                            : reference_write_words(&desk->out, words, count);
}

/* ---- rules ------------------------------------------------------------------------------------
 */

/* Adds the card under one edition. What cannot be read is told, and its line is left out. */
static void add_card(struct rule_told *told, struct bench *bench, const struct rule_file *file,
                     const char *edition, struct desk *desk)
{
    struct card card = {0};
    const struct rule rule = {.id = file->id, .path = file->path, .edition = edition};
    if (!judge_read_card(&card, bench->judge, &rule, desk->arena, &desk->problems))
        return;
    told->title = card.title;
    told->about = card.about;
    told->remedy = card.remedy;
    told->editions[told->cite_count] = edition;
    told->cites[told->cite_count++] = card.cite;
}

static const struct rule_file *find_file(const struct book *book, const char *id,
                                         const char *edition)
{
    const struct rule_file *found = NULL;
    for (size_t i = 0; i < book->rule_count; i++) {
        const struct rule_file *file = &book->rules[i];
        if (strcmp(file->id, id) == 0 &&
            (file->edition == NULL || (edition != NULL && strcmp(file->edition, edition) == 0)))
            found = file; /* an edition's own comes behind the one for all */
    }
    return found;
}

/* A case of a code stands once for each edition: told once. */
static bool add_cases(struct rule_told *told, const struct cases *cases, struct arena *arena)
{
    told->says = arena_take(arena, (cases->count + 1) * sizeof *told->says);
    told->kinds = arena_take(arena, (cases->count + 1) * sizeof *told->kinds);
    for (size_t i = 0; told->says != NULL && told->kinds != NULL && i < cases->count; i++) {
        const struct rule_case *one = &cases->items[i];
        size_t last = told->case_count;
        if (strcmp(one->rule, told->id) != 0 ||
            (last > 0 && strcmp(told->says[last - 1], one->says) == 0))
            continue;
        told->says[last] = one->says;
        told->kinds[last] = one->expect.kind;
        told->case_count++;
    }
    return told->says != NULL && told->kinds != NULL;
}

static bool tell_rule(struct rule_told *told, struct desk *desk, struct bench *bench,
                      const struct book *book, const char *id)
{
    size_t count = 0;
    while (book->editions != NULL && book->editions[count] != NULL)
        count++;
    *told = (struct rule_told){.id = id, .title = "its card cannot be read", .about = "thing"};
    told->editions = arena_take(desk->arena, (count + 1) * sizeof *told->editions);
    told->cites = arena_take(desk->arena, (count + 1) * sizeof *told->cites);
    if (told->editions == NULL || told->cites == NULL)
        return false;
    for (size_t i = 0; i < (count > 0 ? count : 1); i++) {
        const char *edition = count > 0 ? book->editions[i] : NULL;
        const struct rule_file *file = find_file(book, id, edition);
        if (file != NULL)
            add_card(told, bench, file, edition, desk);
    }
    return true;
}

/* `name_asked`: the page of this rule alone; NULL: the list of all. */
static bool write_book_rules(struct desk *desk, struct bench *bench, const struct book *book,
                             const char *name_asked)
{
    struct cases cases;
    struct rule_told *told = arena_take(desk->arena, (book->rule_count + 1) * sizeof *told);
    size_t count = 0;
    cases_read(&cases, book, desk->arena, &desk->problems);
    for (size_t i = 0; told != NULL && i < book->rule_count; i++) {
        const char *id = book->rules[i].id;
        if ((i > 0 && strcmp(book->rules[i - 1].id, id) == 0) ||
            (name_asked != NULL && strcmp(name_asked, strrchr(id, '/') + 1) != 0))
            continue;
        if (!tell_rule(&told[count], desk, bench, book, id) ||
            !add_cases(&told[count], &cases, desk->arena))
            return false;
        count++;
    }
    if (told == NULL || name_asked == NULL)
        return told != NULL &&
               reference_write_rules(&desk->out, book->name, book->title, told, count);
    if (count == 0)
        problems_add(&desk->problems, PROBLEM_INPUT, "rule-unknown", (struct place){0},
                     "%s has no rule %.80s; plumbrule schema rules %s lists them", book->name,
                     name_asked, book->name);
    return count == 0 || reference_write_rule(&desk->out, &told[0]);
}

/* "irc", the folder of a book, or one rule of either: "irc/ridge-clearance", "./my-town/roof". */
static bool write_named(struct desk *desk, struct bench *bench, const char *name)
{
    const char *slash = strrchr(name, '/'), *id = NULL;
    const char *at = arena_format(desk->arena, "%s/book.yaml", name);
    if (at != NULL && slash != NULL && access(at, F_OK) != 0) {
        id = slash + 1;
        name = arena_copy(desk->arena, name, (size_t)(slash - name));
    }
    if (at == NULL || name == NULL)
        return false;
    const struct book *book = shelf_find(bench->shelf, name, (struct place){0}, &desk->problems);
    return book == NULL || write_book_rules(desk, bench, book, id);
}

static enum plumbrule_end write_rules(struct desk *desk, struct bench *bench)
{
    const char *const *directories = desk_book_directories(desk);
    if (directories == NULL || !bench_fetch_shelf(bench, directories))
        return PLUMBRULE_NO_MEMORY;
    if (desk->operands.count < 2)
        return desk_refuse(desk, "book-none", "plumbrule schema rules irc",
                           "say the rules of which book; plumbrule books lists them");
    for (size_t i = 1; i < desk->operands.count; i++)
        if (!write_named(desk, bench, desk->operands.items[i]))
            return PLUMBRULE_NO_MEMORY;
    return (enum plumbrule_end)exit_code(NULL, &desk->problems, true);
}

/* ---- all --------------------------------------------------------------------------------------
 */

static enum plumbrule_end write_with_bench(struct desk *desk, const char *topic)
{
    struct bench bench;
    if (!bench_open(&bench))
        return PLUMBRULE_NO_MEMORY;
    enum plumbrule_end end = strcmp(topic, "rules") == 0        ? write_rules(desk, &bench)
                             : write_words(desk, topic, &bench) ? PLUMBRULE_STANDS
                                                                : PLUMBRULE_NO_MEMORY;
    bench_close(&bench);
    return end;
}

static enum plumbrule_end refuse_topic(struct desk *desk, const char *topic)
{
    size_t count = sizeof topics / sizeof topics[0];
    const char *near = topic != NULL ? text_find_near(topic, topics, count) : NULL;
    const char *list = "";
    for (size_t i = 0; list != NULL && i < count; i++)
        list = arena_format(desk->arena, "%s%s%s", list, i > 0 ? ", " : "", topics[i]);
    if (near != NULL)
        return desk_refuse(desk, "schema-unknown", NULL,
                           "there is no schema of '%s'; did you mean '%s'?", topic, near);
    return desk_refuse(desk, "schema-unknown", "plumbrule schema design",
                       topic == NULL ? "say of what: %s%s"
                                     : "there is no schema of '%s'; there is: %s",
                       topic == NULL ? "" : topic, list != NULL ? list : "");
}

enum plumbrule_end run_schema(struct desk *desk)
{
    static bool (*const plain[])(struct text *) = {schema_write_design,
                                                   schema_write_book,
                                                   schema_write_values,
                                                   schema_write_cases,
                                                   schema_write_result,
                                                   NULL,
                                                   NULL,
                                                   reference_write_facts,
                                                   reference_write_calculators};
    const char *topic = desk->operands.count > 0 ? desk->operands.items[0] : NULL;
    size_t at = 0, count = sizeof topics / sizeof topics[0];
    while (topic != NULL && at < count && strcmp(topics[at], topic) != 0)
        at++;
    if (topic == NULL || at == count)
        return refuse_topic(desk, topic);
    if (desk->operands.count > 1 && strcmp(topic, "rules") != 0)
        return desk_refuse(desk, "operand", NULL, "schema %s takes no '%s'", topic,
                           desk->operands.items[1]);
    if (at < sizeof plain / sizeof plain[0] && plain[at] != NULL)
        return plain[at](&desk->out) ? PLUMBRULE_STANDS : PLUMBRULE_NO_MEMORY;
    return write_with_bench(desk, topic);
}
