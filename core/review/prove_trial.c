/* One case, ready to be run. */
#include "proving.h"

#include <string.h>

#include "file.h"
#include "text.h"

static struct problem *tell_case(struct proving *proving, const char *code, struct place place,
                                 const char *message)
{
    return problems_add(proving->problems, PROBLEM_INPUT, code, place, "%s",
                        message != NULL ? message : "there is no memory left");
}

/* A path that begins in the book's folder, or the name of a sample. */
static const char *find_design(struct proving *proving, const struct rule_case *one)
{
    struct arena *arena = proving->arena;
    size_t length = strlen(one->given);
    bool is_path = length > 5 && strcmp(one->given + length - 5, ".yaml") == 0;
    const char *file = is_path ? one->given : arena_format(arena, "%s.yaml", one->given);
    const char *const own[] = {proving->book->directory, NULL};
    const char *const *places = is_path ? own : proving->catalogues;
    for (size_t i = 0; file != NULL && places[i] != NULL; i++) {
        const char *path = path_join(arena, places[i], file);
        if (path != NULL && file_is_there(path) && !file_is_directory(path))
            return path;
    }
    struct problem *problem = tell_case(
        proving, "design-unknown", one->place,
        arena_format(arena, "there is no design '%.80s' %s", one->given,
                     is_path ? "at that path from the book's folder" : "among the samples"));
    if (problem != NULL)
        problem->example = "given: quill-hollow/standing";
    return NULL;
}

/* What is told of no place, such as a book that is not there, is told of the case. */
static void place_problems(struct problems *problems, size_t from, struct place place)
{
    for (size_t i = from; i < problems->count; i++)
        if (problems->items[i].place.file == NULL)
            problems->items[i].place = place;
}

static struct rulebook *resolve(struct proving *proving, const struct rule_case *one,
                                struct date on)
{
    char day[16];
    const char *key;
    size_t count = 0, before = proving->problems->count;
    date_write(day, sizeof day, on);
    key = day;
    for (; key != NULL && one->books[count] != NULL; count++)
        key = arena_format(proving->arena, "%s|%s", key, one->books[count]);
    for (size_t i = 0; key != NULL && i < proving->stack_count; i++)
        if (strcmp(proving->stacks[i].key, key) == 0)
            return proving->stacks[i].rulebook;
    struct proving_stack *stacks = arena_grow(proving->arena, proving->stacks, proving->stack_count,
                                              &proving->stack_capacity, sizeof *stacks);
    const char *kept = key != NULL ? arena_copy(proving->arena, key, strlen(key)) : NULL;
    if (stacks == NULL || kept == NULL)
        return NULL;
    proving->stacks = stacks;
    struct proving_stack *stack = &stacks[proving->stack_count++];
    *stack = (struct proving_stack){.key = kept};
    if (!rulebook_resolve(&stack->rulebook, one->books, count, on, shelf_find,
                          proving->bench->shelf, proving->arena, proving->problems))
        stack->rulebook = NULL;
    place_problems(proving->problems, before, one->place);
    return stack->rulebook;
}

static const char *near_value(const struct rulebook *rulebook, const char *name,
                              struct arena *arena)
{
    const char **names = arena_take(arena, (rulebook->value_count + 1) * sizeof *names);
    for (size_t i = 0; names != NULL && i < rulebook->value_count; i++)
        names[i] = rulebook->values[i].name;
    return names != NULL ? text_find_near(name, names, rulebook->value_count) : NULL;
}

/* A value that holds for the case alone. */
static bool set_value(struct trial *trial, struct proving *proving, const struct case_value *set)
{
    struct arena *arena = proving->case_arena;
    struct quantity_fault fault;
    struct value *value = index_find(&trial->rulebook.value_index, set->name);
    if (value == NULL) {
        const char *near = near_value(&trial->rulebook, set->name, arena);
        tell_case(proving, "value-unknown", set->place,
                  arena_format(proving->arena, "no book in force declares a value '%.80s'%s%s%s",
                               set->name, near != NULL ? "; did you mean '" : "",
                               near != NULL ? near : "", near != NULL ? "'?" : ""));
        return false;
    }
    struct entry *entry = arena_take(arena, sizeof *entry);
    if (entry == NULL)
        return false;
    *entry = (struct entry){.said = {.text = set->is}, .cite = "the case", .place = set->place};
    if (!declaration_read_amount(&entry->said.is, value->declaration, set->is, &fault)) {
        struct problem *problem =
            tell_case(proving, fault.code, set->place,
                      arena_format(proving->arena, "the value %s: %s", set->name, fault.message));
        if (problem != NULL)
            problem->example = arena_format(proving->arena, "%s: %s", set->name,
                                            declaration_example(value->declaration));
        return false;
    }
    value->state = VALUE_IN_FORCE;
    value->entry = entry;
    value->is = entry->said.is;
    /* A number that the book leaves to others is tried here; else it is the case's own. */
    value->book = value->declaration->given_above ? value->declared_by : NULL;
    return true;
}

/* Values of the trial's own, so that they can be moved. */
static bool copy_values(struct trial *trial, struct proving *proving, const struct rulebook *from)
{
    struct arena *arena = proving->case_arena;
    struct rulebook *rulebook = &trial->rulebook;
    rulebook->value_index = (struct index){.arena = arena};
    rulebook->values = arena_take(arena, (from->value_count + 1) * sizeof *rulebook->values);
    for (size_t i = 0; rulebook->values != NULL && i < from->value_count; i++) {
        rulebook->values[i] = from->values[i];
        if (!index_add(&rulebook->value_index, from->values[i].name, &rulebook->values[i]))
            return false;
    }
    bool is_set = rulebook->values != NULL;
    for (size_t i = 0; is_set && i < trial->one->value_count; i++)
        is_set = set_value(trial, proving, &trial->one->values[i]);
    return is_set;
}

static bool find_rule(struct trial *trial, struct proving *proving, const struct rulebook *from)
{
    const char *id = trial->one->rule;
    const struct rule *rule = rulebook_find_rule(from, id);
    if (rule != NULL) {
        trial->rule = rule;
        trial->rulebook.rules = arena_take(proving->case_arena, sizeof *trial->rulebook.rules);
        if (trial->rulebook.rules == NULL)
            return false;
        trial->rulebook.rules[0] = *rule;
        trial->rulebook.rule_count = 1;
        return true;
    }
    const char **ids = arena_take(proving->case_arena, (from->rule_count + 1) * sizeof *ids);
    for (size_t i = 0; ids != NULL && i < from->rule_count; i++)
        ids[i] = from->rules[i].id;
    const char *near = ids != NULL ? text_find_near(id, ids, from->rule_count) : NULL;
    tell_case(proving, "rule-unknown", trial->one->place,
              arena_format(proving->arena,
                           "there is no rule '%.80s' in the books of the case%s%s%s", id,
                           near != NULL ? "; did you mean '" : "", near != NULL ? near : "",
                           near != NULL ? "'?" : ""));
    return false;
}

bool trial_open(struct trial *out, struct proving *proving, const struct rule_case *one)
{
    struct review day = {.problems = *proving->problems};
    const struct catalogues catalogues = {.directories = proving->catalogues};
    *out = (struct trial){.one = one};
    const char *path = find_design(proving, one);
    if (path == NULL || !design_read_edited(&out->design, path, &catalogues, &one->edits,
                                            proving->case_arena, proving->problems))
        return false;
    day.problems = *proving->problems;
    day.design = out->design;
    bool has_day = review_find_date(&day, one->on);
    *proving->problems = day.problems;
    const struct rulebook *rulebook = has_day ? resolve(proving, one, day.on) : NULL;
    if (rulebook == NULL)
        return false;
    out->rulebook = *rulebook;
    out->working = (struct working){.arena = proving->run_arena, .design = out->design};
    return copy_values(out, proving, rulebook) && find_rule(out, proving, rulebook);
}

void trial_close(struct trial *trial)
{
    working_close(&trial->working);
}

bool trial_run(struct findings *findings, struct trial *trial, struct proving *proving,
               struct problems *problems)
{
    arena_clear(proving->run_arena);
    *findings = (struct findings){.arena = proving->run_arena};
    return judge_review(findings, proving->bench->judge, trial->design, &trial->rulebook,
                        &trial->working, problems) &&
           findings_say(findings);
}
