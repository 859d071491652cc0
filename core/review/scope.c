#include "scope.h"

#include <stdint.h>
#include <string.h>

static const struct rule scope_rule = {.id = "plumbrule/scope", .holds = true};

struct scope {
    struct findings *findings;
    const struct rulebook *rulebook;
};

static bool is_covered(const struct rulebook *rulebook, const char *thing)
{
    for (size_t i = 0; i < rulebook->book_count; i++) {
        const char *const *covers = rulebook->books[i].book->covers;
        for (size_t k = 0; covers != NULL && covers[k] != NULL; k++)
            if (strcmp(covers[k], thing) == 0)
                return true;
    }
    return false;
}

/* The fact that told of the thing. */
static bool add_input(struct finding *finding, const char *thing, const struct fact *fact,
                      struct findings *findings)
{
    struct arena *arena = findings->arena;
    struct input *input = findings_add_input(findings);
    finding->inputs = arena_take(arena, sizeof *finding->inputs);
    if (input == NULL || finding->inputs == NULL)
        return false;
    input->kind = finding->about_kind;
    input->thing = finding->about_name;
    input->text = fact->written != NULL ? fact->written : thing;
    input->source = fact->source;
    input->place = fact->place;
    finding->inputs[finding->input_count++] = input;
    return true;
}

/* One finding for a person about a thing, unless a book in force covers such. */
static bool add(const struct scope *scope, const char *thing, const struct object *about,
                const struct fact *fact)
{
    struct arena *arena = scope->findings->arena;
    if (is_covered(scope->rulebook, thing))
        return true;
    struct finding *finding = finding_add(scope->findings);
    if (finding == NULL)
        return false;
    finding->rule = &scope_rule;
    finding->title = "Beyond the scope of the books in force";
    finding->cite = "the books' own scope";
    finding->outcome = OUTCOME_REVIEW;
    finding->about_kind = about->kind->name;
    finding->about_name = about->path;
    finding->place = fact->place;
    finding->order = SIZE_MAX; /* behind all rules */
    if (!add_input(finding, thing, fact, scope->findings))
        return false;
    struct test *test =
        test_add(&finding->tests, &finding->test_count, &finding->test_capacity, arena);
    if (test == NULL)
        return false;
    test->relation = RELATION_REVIEW;
    test->outcome = OUTCOME_REVIEW;
    test->what = arena_format(arena,
                              "No book in force has rules for this (%s): ask the authority what it "
                              "asks for there",
                              thing);
    finding->message = test->what;
    return test->what != NULL;
}

/* Storage, a generator and the like, each by its own kind. */
static bool review_sources(const struct scope *scope, const struct design *design)
{
    static const char *const beyond[] = {"storage", "generator", "wind", "other"};
    const struct objects *all = &design->of_kind[KIND_source];
    for (size_t i = 0; i < all->count; i++)
        for (size_t k = 0; k < sizeof beyond / sizeof beyond[0]; k++)
            if (object_is(all->items[i], SLOT_source_kind, beyond[k]) &&
                !add(scope,
                     k < 2    ? beyond[k]
                     : k == 2 ? "wind source"
                              : "other source",
                     all->items[i], object_fact(all->items[i], SLOT_source_kind)))
                return false;
    return true;
}

/* A word of a fact that says the project holds such a thing. */
struct telling {
    const char *thing;
    enum kind_id kind;
    unsigned slot;
    const char *word;
};

static const struct telling tellings[] = {
    {"ground array", KIND_racking, SLOT_racking_mounting, "ground"},
    {"ground array", KIND_project, SLOT_project_scope, "ground-mounted PV"},
    {"detached building", KIND_roof_plane, SLOT_roof_plane_structure, "detached garage"},
    {"detached building", KIND_roof_plane, SLOT_roof_plane_structure, "carport"},
    {"detached building", KIND_roof_plane, SLOT_roof_plane_structure, "shade structure"},
    {"detached building", KIND_roof_plane, SLOT_roof_plane_structure, "accessory"},
    {"detached building", KIND_building, SLOT_building_occupancy, "accessory"},
    {"other occupancy", KIND_building, SLOT_building_occupancy, "multifamily"},
    {"other occupancy", KIND_building, SLOT_building_occupancy, "commercial"},
};

static bool review_words(const struct scope *scope, const struct design *design)
{
    for (size_t i = 0; i < sizeof tellings / sizeof tellings[0]; i++) {
        const struct telling *telling = &tellings[i];
        const struct objects *all = &design->of_kind[telling->kind];
        for (size_t k = 0; k < all->count; k++)
            if (object_is(all->items[k], telling->slot, telling->word) &&
                !add(scope, telling->thing, all->items[k],
                     object_fact(all->items[k], telling->slot)))
                return false;
    }
    return true;
}

/* Storage that the project names as its work but declares nowhere among the sources. */
static bool review_storage_work(const struct scope *scope, const struct design *design)
{
    const struct objects *projects = &design->of_kind[KIND_project];
    const struct objects *sources = &design->of_kind[KIND_source];
    for (size_t i = 0; i < sources->count; i++)
        if (object_is(sources->items[i], SLOT_source_kind, "storage"))
            return true; /* told there */
    for (size_t i = 0; i < projects->count; i++)
        if (object_is(projects->items[i], SLOT_project_scope, "storage") &&
            !add(scope, "storage", projects->items[i],
                 object_fact(projects->items[i], SLOT_project_scope)))
            return false;
    return true;
}

/* By their number or by the name of the house, whichever tells of a second one. */
static bool review_dwellings(const struct scope *scope, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_building];
    for (size_t i = 0; i < all->count; i++) {
        const struct object *building = all->items[i];
        const struct fact *told = object_fact(building, SLOT_building_dwelling_units);
        bool has_second = object_has(building, SLOT_building_dwelling_units) && told->is.number > 1;
        if (!has_second && object_is(building, SLOT_building_occupancy, "two-family dwelling")) {
            told = object_fact(building, SLOT_building_occupancy);
            has_second = true;
        }
        if (has_second && !add(scope, "second dwelling unit", building, told))
            return false;
    }
    return true;
}

static bool review_panels(const struct scope *scope, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_panel];
    if (is_covered(scope->rulebook, "detached building"))
        return true; /* its panels with it */
    for (size_t i = 0; i < all->count; i++) {
        const struct fact *detached = object_fact(all->items[i], SLOT_panel_detached_building);
        if (object_has(all->items[i], SLOT_panel_detached_building) && detached->is.yes &&
            !add(scope, "panel in a detached building", all->items[i], detached))
            return false;
    }
    return true;
}

/* A limit of export holds by what holds it: no bus and no size of generation rests on it here. */
static bool review_export(const struct scope *scope, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_interconnection];
    for (size_t i = 0; i < all->count; i++)
        if (object_has(all->items[i], SLOT_interconnection_export_limit) &&
            !add(scope, "limit of export", all->items[i],
                 object_fact(all->items[i], SLOT_interconnection_export_limit)))
            return false;
    return true;
}

bool scope_review(struct findings *findings, const struct design *design,
                  const struct rulebook *rulebook)
{
    const struct scope scope = {findings, rulebook};
    return review_sources(&scope, design) && review_storage_work(&scope, design) &&
           review_words(&scope, design) && review_dwellings(&scope, design) &&
           review_panels(&scope, design) && review_export(&scope, design);
}
