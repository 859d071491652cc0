/* What a rule may spend: the same whatever was judged before, and memory counts. */
#include "room_trial.h"

#define HEAD(about)                                                                                \
    "return { title = 'Trial', cite = 'Trial 1', about = '" about                                  \
    "', check = function(thing, book, design)\n"
#define TAIL "\nend }\n"

/* The first rule to look at things of a kind has as much left as all that come behind it. */
static void test_same_budget_each_time(void)
{
    static const char text[] =
        HEAD("busbar") "local all = {design.roof.planes[1], design.panels[1], design.service, "
                       "design.site, design.building, design.project}\n"
                       "for i = 1, 1500 do end shall.be('There', same(#all, 6))" TAIL;
    const char *path = write_rule(text, strlen(text));
    size_t broken = 0, passed = 0;
    for (long instructions = 1000; instructions < 1300; instructions += 2) {
        struct judge_limits limits = {.instructions = instructions};
        struct room_trial trial = room_open(&limits);
        enum outcome first = OUTCOME_COUNT;
        room_review(&trial, NULL); /* Lua's stack has grown to what a rule needs */
        for (size_t turn = 0; turn < 2; turn++) {
            room_review(&trial, path);
            const struct finding *finding = finding_of(&trial, "room/attack", 0);
            if (!CHECK(trial.is_done && finding != NULL, "the review comes to its end"))
                continue;
            first = turn == 0 ? finding->outcome : first;
            CHECK(finding->outcome == first, "what was judged before decides nothing");
            broken += finding->outcome == OUTCOME_OPEN;
            passed += finding->outcome == OUTCOME_PASS;
        }
        room_close(&trial);
    }
    CHECK(broken > 0 && passed > 0, "some budgets are too small and some are not");
    remove(path);
}

/* Memory that a rule takes is its work for all things together, too, be it straight code that no
 * hook looks at. */
static void test_memory_of_all_things(void)
{
    struct judge_limits limits = {.instructions = 2000};
    struct room_trial trial = room_open(&limits);
    struct text text = {0};
    text_add_word(
        &text, "local t = '0123456789abcdef' for i = 1, 7 do t = t .. t end\n" HEAD("roof_plane"));
    for (int i = 0; i < 50; i++)
        text_add_word(&text, "local s = t .. 'a' s = nil\n"); /* 33 instructions each */
    text_add_word(&text, "shall.be('Good', true)" TAIL);
    struct design *design = trial.design;
    struct objects *planes = &design->of_kind[KIND_roof_plane];
    enum { MANY = 200 };
    struct object *many[MANY];
    for (size_t i = 0; i < MANY; i++)
        many[i] = planes->items[i % planes->count];
    *planes = (struct objects){.items = many, .count = MANY};
    const char *path = write_rule(text.bytes, text.length);
    room_review(&trial, path);
    remove(path);
    size_t passed = 0, open = 0;
    for (size_t i = 0; i < trial.findings.count; i++) {
        const struct finding *finding = trial.findings.items[i];
        bool is_ours = strcmp(finding->rule->id, "room/attack") == 0;
        passed += is_ours && finding->outcome == OUTCOME_PASS;
        open += is_ours && finding->outcome == OUTCOME_OPEN;
    }
    CHECK(passed > 50 && passed < 80 && open == MANY - passed, "it is stopped after some of them");
    CHECK(trial.problems.count == 1 && strcmp(trial.problems.items[0].code, "rule-budget") == 0,
          "for its budget");
    text_free(&text);
    room_close(&trial);
}

int main(void)
{
    test_same_budget_each_time();
    test_memory_of_all_things();
    return checks_end();
}
