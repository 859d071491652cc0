/* What findings say: the algebra of outcomes from end to end, what was read, what is kept from one
 * review to the next, and limits of every size. */
#include "room.h"
#include "room_trial.h"

#define HEAD(about)                                                                                \
    "return { title = 'Trial', cite = 'Trial 1', about = '" about                                  \
    "', check = function(thing, book, design)\n"
#define TAIL "\nend }\n"

static void review_text(struct room_trial *trial, const char *text)
{
    static size_t count;
    /* A judge keeps what it read of a path, so each text gets its own. */
    const char *path = write_rule(text, strlen(text));
    const char *name = arena_format(trial->arena, "%s.%zu", path, count++);
    if (name == NULL || rename(path, name) != 0)
        abort();
    room_review(trial, name);
    remove(name);
}

static enum outcome outcome_of(struct room_trial *trial, const char *text)
{
    review_text(trial, text);
    const struct finding *finding = finding_of(trial, "room/attack", 0);
    CHECK(trial->problems.count == 0, text);
    return finding != NULL ? finding->outcome : OUTCOME_COUNT;
}

/* Each outcome as a statement of a rule about a busbar, worst first. */
static const struct {
    enum outcome outcome;
    const char *says;
} ways[] = {{OUTCOME_FAIL, "shall.be('Bad', false)"},
            {OUTCOME_OPEN, "shall.be('Set', thing.protecting_device > 1 * A)"},
            {OUTCOME_REVIEW, "review('Look')"},
            {OUTCOME_PASS, "shall.be('Good', true)"}};
enum { WAYS = 4 };

static enum outcome best(size_t a, size_t b)
{
    static const enum outcome order[] = {OUTCOME_PASS, OUTCOME_OPEN, OUTCOME_REVIEW, OUTCOME_FAIL};
    for (size_t i = 0; i < WAYS; i++)
        if (ways[a].outcome == order[i] || ways[b].outcome == order[i])
            return order[i];
    return OUTCOME_COUNT;
}

static void test_algebra(void)
{
    struct room_trial trial = room_open(NULL);
    for (size_t a = 0; a < WAYS; a++)
        for (size_t b = 0; b < WAYS; b++) {
            /* What comes after a missing fact is not reached. */
            enum outcome should =
                a < b || ways[a].outcome == OUTCOME_OPEN ? ways[a].outcome : ways[b].outcome;
            const char *text =
                arena_format(trial.arena, HEAD("busbar") "%s\n%s" TAIL, ways[a].says, ways[b].says);
            CHECK(outcome_of(&trial, text) == should, text);
            text = arena_format(trial.arena,
                                HEAD("busbar") "shall.meet_one_of { {'a', function() %s end}, "
                                               "{'b', function() %s end} }" TAIL,
                                ways[a].says, ways[b].says);
            CHECK(outcome_of(&trial, text) == best(a, b), text);
            for (size_t c = 0; c < WAYS; c++) {
                /* An option of two statements beside an option of one. */
                size_t worst = a < b || ways[a].outcome == OUTCOME_OPEN ? a : b;
                text =
                    arena_format(trial.arena,
                                 HEAD("busbar") "shall.meet_one_of { {'a', function() %s\n%s end}, "
                                                "{'b', function() %s end} }" TAIL,
                                 ways[a].says, ways[b].says, ways[c].says);
                CHECK(outcome_of(&trial, text) == best(worst, c), text);
            }
        }
    room_close(&trial);
}

static void test_should(void)
{
    struct room_trial trial = room_open(NULL);
    CHECK(outcome_of(&trial, HEAD("busbar") "should.be('Bad', false)" TAIL) == OUTCOME_FAIL,
          "a failing should fails");
    CHECK(finding_of(&trial, "room/attack", 0)->normative == SHOULD, "as a warning");
    CHECK(
        outcome_of(&trial, HEAD("busbar") "should.be('Bad', false) shall.be('Bad', false)" TAIL) ==
            OUTCOME_FAIL,
        "with a shall it fails");
    CHECK(finding_of(&trial, "room/attack", 0)->normative == SHALL, "as an error");
    CHECK(exit_code(&trial.findings, &trial.problems, true) == 1, "and the exit code is 1");
    room_close(&trial);
}

static void test_absence(void)
{
    struct room_trial trial = room_open(NULL);
    CHECK(outcome_of(&trial, HEAD("meter") "shall.be('Bad', false)" TAIL) == OUTCOME_NOT_APPLICABLE,
          "a list stated empty: not applicable");
    CHECK(outcome_of(&trial, HEAD("string") "shall.be('Bad', false)" TAIL) == OUTCOME_OPEN,
          "a list that nobody told: open");
    const struct finding *finding = finding_of(&trial, "room/attack", 0);
    CHECK_TEXT(finding->tests[0].missing.fact, "strings", "it names the list");
    CHECK_TEXT(finding->about_kind, "design", "about the design");
    CHECK(outcome_of(&trial, HEAD("obstruction") "shall.be('Bad', false)" TAIL) == OUTCOME_OPEN,
          "nothing of a kind whose holders have not told: open");
    /* Two planes are there, and all are told: no further finding. */
    CHECK(outcome_of(&trial, HEAD("roof_plane") "shall.be('Good', true)" TAIL) == OUTCOME_PASS,
          "things that are there");
    CHECK(finding_of(&trial, "room/attack", 1) != NULL &&
              finding_of(&trial, "room/attack", 2) == NULL,
          "one finding each");
    room_close(&trial);
}

static void test_reads(void)
{
    struct room_trial trial = room_open(NULL);
    trial.keeps_steps = true;
    static const char text[] =
        HEAD("busbar") "local x = thing.rating; x = thing.rating; x = design.site.exposure\n"
                       "x = book.limit_current; x = book.limit_current\n"
                       "calc.ocpd_up(41 * A)\n"
                       "shall.not_exceed('Current', book.limit_current, thing.rating)" TAIL;
    CHECK(outcome_of(&trial, text) == OUTCOME_PASS, "it passes");
    const struct finding *finding = finding_of(&trial, "room/attack", 0);
    if (CHECK(finding->input_count == 2, "each fact once, things themselves left out")) {
        CHECK_TEXT(input_name(finding->inputs[0], trial.arena), "busbar main/bus: rating",
                   "in the order of reading");
        CHECK_TEXT(finding->inputs[0]->text, "125 A", "as written");
        CHECK(finding->inputs[0]->place.line == 17, "with its line in the design");
        CHECK_TEXT(input_name(finding->inputs[1], trial.arena), "site: exposure", "then the next");
    }
    if (CHECK(finding->value_count == 1, "each value once")) {
        const struct value *value = finding->values[0];
        CHECK_TEXT(value->name, "limit_current", "its name");
        CHECK_TEXT(value->book->name, "room", "its book");
        CHECK_TEXT(value->edition, "1", "its edition");
        CHECK_TEXT(value->entry->cite, "Trial 1", "its citation");
        CHECK(value->entry->place.line == 1, "its place");
    }
    CHECK(finding->line_count > 0, "the calculation's steps");
    CHECK(CHECK_NEAR(finding->tests[0].margin, 0.2, 1e-12, "the margin is a share of the limit"),
          "margin");
    trial.keeps_steps = false;
    outcome_of(&trial, text);
    CHECK(finding_of(&trial, "room/attack", 0)->line_count == 0, "no steps unless asked for");
    room_close(&trial);
}

/* All that a review says, as one text. */
static char *say(const struct room_trial *trial, struct arena *arena)
{
    char *all = arena_format(arena, "%s", "");
    for (size_t i = 0; i < trial->findings.count; i++) {
        const struct finding *finding = trial->findings.items[i];
        all = arena_format(arena, "%s%s %s %s: %s (%zu, %zu, %zu)\n", all, finding->rule->id,
                           finding->about_name, outcome_name(finding->outcome), finding->message,
                           finding->test_count, finding->input_count, finding->value_count);
    }
    for (size_t i = 0; i < trial->problems.count; i++)
        all = arena_format(arena, "%s%u %s\n", all, trial->problems.items[i].place.line,
                           trial->problems.items[i].message);
    return all;
}

/* A rule that tries to remember: in locals of its file, in tables, in its world, in what is shared.
 */
static const char remembering[] =
    "local seen, kept = 0, {}\n"
    "local function count() seen = seen + 1; table.insert(kept, seen); return seen + #kept end\n"
    "return { title = 'Remembers', cite = 'x', about = 'busbar', check = function(bus)\n"
    "local before = count()\n"
    "shall.not_exceed(format('Seen %d, rating', before), bus.rating, 150 * A) end }\n";

static void test_no_memory_between_designs(void)
{
    struct room_trial trial = room_open(NULL);
    struct design *first = trial.design, *second = read_house("other-house.yaml", trial.arena);
    const char *path = write_rule(remembering, strlen(remembering));
    char *said[2][2];
    for (size_t order = 0; order < 2; order++) {
        judge_free(trial.judge);
        trial.judge = judge_new(NULL);
        if (trial.judge == NULL)
            abort();
        for (size_t turn = 0; turn < 2; turn++) {
            size_t which = turn ^ order;
            trial.design = which == 0 ? first : second;
            room_review(&trial, path);
            said[order][which] = say(&trial, trial.arena);
        }
    }
    CHECK_TEXT(said[0][0], said[1][0], "the first design, in both orders");
    CHECK_TEXT(said[0][1], said[1][1], "the second design, in both orders");
    CHECK(strstr(said[0][0], "Seen 2, rating") != NULL, "each review begins anew");
    CHECK(strcmp(said[0][0], said[0][1]) != 0, "and the designs differ");
    /* A runaway rule in between changes nothing either. */
    trial.design = first;
    room_review(&trial, ROOM_DIR "attacks/memory-many-tables.lua");
    room_review(&trial, path);
    CHECK_TEXT(say(&trial, trial.arena), said[0][0], "after a rule that ran away");
    remove(path);
    room_close(&trial);
}

/* The table of a card stays from one review to the next where nothing can be kept behind it. Each
 * rule counts in a place of its own, or in none. */
static const struct {
    const char *head, *bump, *counts;
    bool is_kept;
} ways_to_remember[] = {
    {"", "", "1", true},
    {"local function one() return 1 end\nlocal function two() return one() end", "", "two()", true},
    {"local one <const> = 1", "", "one", true},
    {"local count = 0", "count = count + 1 return count", "bump()", false},
    {"local t = {0}", "t[1] = t[1] + 1 return t[1]", "bump()", false},
    {"local function said() return 0 end",
     "local n = said() + 1 said = function() return n end return n", "bump()", false},
    /* Equal to what it was, and yet another number. */
    {"local zero = 0.0", "local was = 1 / zero zero = -0.0 return was < 0 and 2 or 1", "bump()",
     false},
    {"local one = 1", "local n = 9007199254740993 * one - 9007199254740992 one = 1.0 return n",
     "bump()", false},
};

static void test_cards_kept(void)
{
    struct room_trial trial = room_open(NULL);
    for (size_t i = 0; i < sizeof ways_to_remember / sizeof ways_to_remember[0]; i++) {
        const char *text = arena_format(trial.arena,
                                        "%s\nlocal function bump() %s end\n" HEAD(
                                            "roof_plane") "shall.not_exceed('Counted', %s, 9)" TAIL,
                                        ways_to_remember[i].head, ways_to_remember[i].bump,
                                        ways_to_remember[i].counts);
        const char *path = write_rule(text, strlen(text));
        const char *name = arena_format(trial.arena, "%s.kept%zu", path, i), *first = NULL;
        if (name == NULL || rename(path, name) != 0)
            abort();
        for (size_t turn = 0; turn < 3; turn++) {
            room_review(&trial, name);
            CHECK(trial.problems.count == 0, text);
            if (turn == 0)
                first = say(&trial, trial.arena);
            CHECK_TEXT(say(&trial, trial.arena), first, text);
        }
        const struct rule_text *kept = rule_text_find(trial.judge, name);
        CHECK((kept != NULL && kept->card_table >= 0) == ways_to_remember[i].is_kept, text);
        remove(name);
    }
    room_close(&trial);
}

/* What one rule's head made is not kept at the cost of other rules. */
static void test_cards_too_large_to_keep(void)
{
    static const char *const hoards[] = {
        "local s, t = 'x', {}\nfor i = 1, 14 do s = s .. s end\n"
        "for i = 1, 3000 do t[i] = s .. i end\nreturn {title = 'T', cite = 'C', junk = t,\n"
        "about = 'roof_plane', check = function(plane) shall.be('There', true) end}\n",
        "local s, t = 'x', {}\nfor i = 1, 14 do s = s .. s end\n"
        "for i = 1, 3000 do t[i] = s .. i end\nreturn {title = 'T', cite = {['1'] = 'C', x = t},\n"
        "about = 'roof_plane', check = function(plane) shall.be('There', true) end}\n"};
    static const char needs_much[] =
        HEAD("roof_plane") "local s, t = 'y', {} for i = 1, 14 do s = s .. s end\n"
                           "for i = 1, 1500 do t[i] = s .. i end\n"
                           "shall.be('There', same(#t, 1500))" TAIL;
    struct room_trial trial = room_open(NULL);
    for (size_t i = 0; i < sizeof hoards / sizeof hoards[0]; i++)
        review_text(&trial, hoards[i]);
    CHECK(outcome_of(&trial, needs_much) == OUTCOME_PASS, "another has the memory it may take");
    room_close(&trial);
}

/* However small the limits: an end, and never a pass of what did not run to its end. */
static void try_limits(const struct judge_limits *limits, size_t *broken, size_t *passed)
{
    static const char *const rules[] = {"sort-stable", "missing-nested", "address-of-table"};
    struct room_trial trial = room_open(limits);
    for (size_t i = 0; i < sizeof rules / sizeof rules[0]; i++) {
        room_review(&trial, arena_format(trial.arena, ROOM_DIR "attacks/%s.lua", rules[i]));
        const struct finding *finding = finding_of(&trial, "room/attack", 0);
        if (!CHECK(trial.is_done && finding != NULL, "the review comes to its end"))
            continue;
        bool is_limit = false;
        for (size_t k = 0; k < trial.problems.count; k++) {
            const char *code = trial.problems.items[k].code;
            is_limit = strcmp(code, "rule-budget") == 0 || strcmp(code, "rule-memory") == 0;
            CHECK(is_limit, trial.problems.items[k].message);
        }
        *passed += finding->outcome == OUTCOME_PASS;
        *broken += is_limit;
        CHECK(is_limit || finding->outcome == (i == 1 ? OUTCOME_OPEN : OUTCOME_PASS),
              "what is not broken says what it always says");
    }
    room_close(&trial);
}

static void test_small_limits(void)
{
    size_t broken = 0, passed = 0;
    for (long instructions = 1; instructions < 400; instructions += 3)
        try_limits(&(struct judge_limits){.instructions = instructions}, &broken, &passed);
    for (long instructions = 400; instructions < 2000000; instructions += instructions / 4)
        try_limits(&(struct judge_limits){.instructions = instructions}, &broken, &passed);
    CHECK(broken > 100 && passed > 10, "some budgets are too small and some are not");
    broken = passed = 0;
    for (size_t memory = 1; memory < (1 << 21); memory += memory / 6 + 1)
        try_limits(&(struct judge_limits){.memory = memory}, &broken, &passed);
    CHECK(broken > 100 && passed > 10, "some memories are too small and some are not");
}

static void test_results_limit(void)
{
    struct judge_limits limits = {.results = 3};
    struct room_trial trial = room_open(&limits);
    CHECK(outcome_of(&trial, HEAD("busbar") "for i = 1, 3 do shall.be('x', true) end" TAIL) ==
              OUTCOME_PASS,
          "as many as may be");
    review_text(&trial, HEAD("busbar") "for i = 1, 4 do shall.be('x', true) end" TAIL);
    CHECK(finding_of(&trial, "room/attack", 0)->outcome == OUTCOME_OPEN &&
              trial.problems.count == 1,
          "one more breaks the rule");
    review_text(&trial, HEAD("busbar") "shall.meet_one_of { {'a', function() for i = 1, 3 do "
                                       "shall.be('x', true) end end}, {'b', function() "
                                       "shall.be('x', true) end} }" TAIL);
    CHECK(finding_of(&trial, "room/attack", 0)->outcome == OUTCOME_OPEN,
          "those of options count, too");
    room_close(&trial);
}

int main(void)
{
    test_algebra();
    test_should();
    test_absence();
    test_reads();
    test_no_memory_between_designs();
    test_cards_kept();
    test_cards_too_large_to_keep();
    test_small_limits();
    test_results_limit();
    return checks_end();
}
